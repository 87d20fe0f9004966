// What every door is asked alike: people, a lift and its settings, moments, spine, muscles, limits,
// a sweep, people drawn by a seed, a band, a claim, pounds and inches, a comparison, files.
var lifter = person(MALE, kg(85), cm(178));
lifter
var other = person(FEMALE, lb(143), inch(66)).longer(THIGH, percent(4)).aged(34).trained(TRAINED);
other
other.percentileForStature(THIGH)
var pull = hinge(lifter).holding(barbell(kg(120))).hipHeight(cm(60)).gripWidth(cm(50));
var start = pull.start();
start
start.moments()
start.spine()
start.muscles()
start.heldBy()
start.opposing(HIP)
start.discs()
start.contactForces()
start.strength()
start.limiter()
start.largest()
start.moment(L5_S1).arm() / start.moment(SHOULDER).arm()
double share(Position p) { return p.moment(KNEE).signed() / p.moment(HIP).signed(); }
var byHip = sweep("hip height", cm(50), cm(70), 9, h -> pull.hipHeight(h).start());
byHip
byHip.sheet(HIP, KNEE, L5_S1)
byHip.tidySheet()
byHip.rows().stream().filter(row -> row.held()).mapToDouble(row -> share(row.position())).sum()
byHip.save("hip-height.csv")
byHip.tidySheet().save("hip-height-tidy.csv")
var crowd = people(40, 7).longFor(THIGH, percent(60));
crowd
crowd.sizes(THIGH, TRUNK)
doubt(pull).draws(100).seed(3).band(L5_S1)
claim("the hips carry more than the knees").margin("N·m", p -> p.moment(HIP).size() - p.moment(KNEE).size()).over(crowd, who -> backSquat(who).holding(barbell(who.mass())).depth(deg(0)).finish())
var squat = backSquat(other).holding(barbell(lb(135))).depth(deg(-10));
squat.verdict()
squat.finish().moment(KNEE)
preferences().pounds()
squat.finish()
start.largest()
preferences().kilograms()
var both = compare(start, start.on(chestPad(deg(30)))).called("free", "on the pad");
both
both.moments()
both.compression()
both.moments().save("side-by-side.csv")
var rise = movement("pull", smooth(seconds(0.8)), t -> pull.hipHeight(cm(62 + 6 * t)).start());
sweep(rise, 5).sheet(HIP, L5_S1)
start.worksheet().save("start.json")
start.picture().save("start.svg")
lowest("hip height", cm(52), cm(70), h -> pull.hipHeight(h).start(), KNEE)
