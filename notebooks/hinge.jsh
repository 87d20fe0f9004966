// A hip hinge, from a person to a table, a sweep, a plot and a picture.
// Invented for a lesson series of an amateur club's coach: "lifter A, usual proportions".
// Run it:  java -jar target/leverbook.jar run notebooks/hinge.jsh --out target/hinge

// Who lifts, and what: the bar lies on the floor over the middle of the foot.
var lifter = person(MALE, kg(85), cm(178));
var pull   = hinge(lifter).holding(barbell(kg(140))).hipHeight(cm(58));

// The position in which the bar leaves the floor: a pose that fits, or the reason why none does.
var start = pull.start();
start

// Moments at every joint: arm, size, what the bar and the body tend to do, what opposes it.
start.moments().save("moments.csv")

// The spine level by level, L5/S1 to C7/T1.
start.spine()
start.spine().save("spine.csv")

// The body, the line of force and the arms to it, to scale.
start.picture().save("start")

// What if the hips start higher or lower? Heights that do not work stay, with the reason.
var byHip = sweep("hip height", cm(48), cm(72), 25, h -> pull.hipHeight(h).start());
byHip.save("hip-height.csv")
byHip.plot(HIP, KNEE, L5_S1, SHOULDER).save("hip-height")

// Everything needed to do the sums again elsewhere.
start.worksheet().save("start.json")
