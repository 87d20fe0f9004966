// What lessons claim, tested on adults of a survey's spread: how often it holds, and for whom not.
// Invented for a lesson series of an amateur club's coach. Some of these claims do not hold.
// Run it:  java -jar target/leverbook.jar run notebooks/claims.jsh --out target/claims

var group = new ArrayList<Person>(people(MALE, 50, 1));
group.addAll(people(FEMALE, 50, 1));

// Loads go with the lifter: shares of body mass.
Quantity<Mass> share(Person who, double part) { return who.mass().multiply(part); }

// Heights of the hips go with the legs: shares of how high the hips are standing.
Quantity<Length> hips(Person who, double part) { return m(part * who.body().links().standingHipHeight()); }

Hinge pull(Person who) { return hinge(who).holding(barbell(share(who, 1))); }

// What a hinge asks of the back, level by level, from L5/S1 up.
double leastStep(Position p, JointId top) {
  double least = 1e9;
  for (int level = L5_S1.ordinal(); level < top.ordinal(); level++) {
    least = Math.min(least, p.moment(JointId.values()[level]).size() - p.moment(JointId.values()[level + 1]).size());
  }
  return least;
}
var levels = claim("in a hinge every level from L5/S1 to T7/T8 carries more than the level above it").margin("N·m", p -> leastStep(p, T7_T8)).over(group, who -> pull(who).start());
levels
// Up to the neck it is another matter: there the bar's line passes close by, and behind some levels.
var allLevels = claim("in a hinge every level from L5/S1 to C7/T1 carries more than the level above it").margin("N·m", p -> leastStep(p, C7_T1)).over(group, who -> pull(who).start());
allLevels
var midBack = claim("in a hinge the low back carries twice what the mid back does").margin("N·m", p -> p.moment(L5_S1).size() - 2 * p.moment(T7_T8).size()).over(group, who -> pull(who).start());
midBack
var fiveTimes = claim("in a hinge the hip carries five times what the shoulder does").margin("N·m", p -> p.moment(HIP).size() - 5 * p.moment(SHOULDER).size()).over(group, who -> pull(who).start());
fiveTimes

// A chest on a pad, the same mass in the hands.
var padHelps = claim("a pad under the chest takes three quarters of the low back's moment away").margin("N·m", (free, padded) -> 0.25 * free.moment(L5_S1).size() - padded.moment(L5_S1).size()).over(group, who -> bentOverRow(who).holding(barbell(share(who, 0.4))).start(), who -> chestSupportedRow(who).holding(dumbbells(share(who, 0.2))).start());
padHelps

// Hips higher or lower, the bar the same.
var knees = claim("higher hips ask less of the knees").margin("N·m", (low, high) -> low.moment(KNEE).size() - high.moment(KNEE).size()).over(group, who -> pull(who).hipHeight(hips(who, 0.66)).start(), who -> pull(who).hipHeight(hips(who, 0.74)).start());
knees
var lowBack = claim("higher hips ask more of the low back").margin("N·m", (low, high) -> high.moment(L5_S1).size() - low.moment(L5_S1).size()).over(group, who -> pull(who).hipHeight(hips(who, 0.66)).start(), who -> pull(who).hipHeight(hips(who, 0.74)).start());
lowBack

// Long thighs in squats. The same lifter with thighs a twentieth longer: once shanks and trunk give so that stature stays, once the lifter is taller for it.
Person usual(Person who) { return person(who.sex(), who.mass(), who.stature()); }
Position squat(Person build, Person who) { return backSquat(build).holding(barbell(share(who, 0.8))).depth(deg(0)).finish(); }
var longThighs = claim("with longer thighs, stature kept, a squat to level thighs asks more of the hips").margin("N·m", (as, longer) -> longer.moment(HIP).size() - as.moment(HIP).size()).over(group, who -> squat(usual(who), who), who -> squat(usual(who).longer(THIGH, percent(5)), who));
longThighs
var tallThighs = claim("with longer thighs, all else kept, a squat to level thighs asks more of the hips").margin("N·m", (as, longer) -> longer.moment(HIP).size() - as.moment(HIP).size()).over(group, who -> squat(usual(who), who), who -> squat(usual(who).longer(THIGH, percent(5)).statureFollows(), who));
tallThighs
// Everybody as they are: the split finds who differs.
var squats = List.of(liftOf("high bar", who -> backSquat(who).holding(barbell(share(who, 0.8)))), liftOf("low bar", who -> backSquat(who).bar(Site.UPPER_BACK_LOW).holding(barbell(share(who, 0.8)))));
var hipsFirst = claim("a squat to level thighs asks more than one and a half times as much of the hips as of the knees").margin("N·m", p -> p.moment(HIP).size() - 1.5 * p.moment(KNEE).size()).over(group, squats, List.of(setting("thighs level", squat -> squat.depth(deg(0)).finish())));
hipsFirst

// Grip width in rows and presses.
var widePress = claim("a wide grip asks more of the shoulder at the bottom of a bench press").margin("N·m", (usual, wide) -> wide.moment(SHOULDER).size3d() - usual.moment(SHOULDER).size3d()).over(group, who -> benchPress(who).holding(barbell(share(who, 0.5))).gripWidth(cm(50)).start(), who -> benchPress(who).holding(barbell(share(who, 0.5))).gripWidth(cm(75)).start());
widePress
var wideRow = claim("a wider grip asks more of the shoulder at the top of a row").margin("N·m", (usual, wide) -> wide.moment(SHOULDER).size3d() - usual.moment(SHOULDER).size3d()).over(group, who -> bentOverRow(who).holding(barbell(share(who, 0.4))).gripWidth(cm(45)).finish(), who -> bentOverRow(who).holding(barbell(share(who, 0.4))).gripWidth(cm(60)).finish());
wideRow

// The pad's angle: 20° lies nearly flat.
var pads = claim("on a pad a row leaves less than 30 N·m for the low back").margin("N·m", p -> 30 - p.moment(L5_S1).size()).over(group, List.of(liftOf("row on a pad", who -> chestSupportedRow(who).holding(dumbbells(share(who, 0.2))))), settings("pad angle", deg(20), deg(70), 3, (row, tilt) -> row.padAngle(tilt).start()));
pads

// All answers in one table, and the pictures.
var all = claims(levels, allLevels, midBack, fiveTimes, padHelps, knees, lowBack, longThighs, tallThighs, hipsFirst, widePress, wideRow, pads);
all
all.save("claims.csv")
levels.picture().save("levels.svg")
allLevels.picture().save("all-levels.svg")
midBack.picture().save("mid-back.svg")
fiveTimes.picture().save("five-times.svg")
padHelps.picture().save("chest-support.svg")
knees.picture().save("hips-knees.svg")
lowBack.picture().save("hips-low-back.svg")
longThighs.picture().save("long-thighs.svg")
tallThighs.picture().save("long-thighs-taller.svg")
hipsFirst.picture().save("hips-and-knees.svg")
widePress.picture().save("grip-press.svg")
wideRow.picture().save("grip-row.svg")
pads.picture().save("pad-angle.svg")

// The case in which it is decided most narrowly, ready to draw; every case of one claim as a row.
knees.closest().picture().save("hips-knees-closest.svg")
hipsFirst.save("hips-and-knees.csv")
