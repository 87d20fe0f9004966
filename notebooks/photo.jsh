// A still of a deadlift and a squat over time, both drawn or computed from poses of our own:
// nobody was photographed.
var liftee = person(MALE, kg(85), cm(178));

// Marks as a coach reads them off, in pixels; the scale is a rod of one metre beside the lifter.
var still = photo("pictures/deadlift-still.png").scale(800, 774, 800, 426, m(1)).distance(m(5)).mark("hip", 700, 606).mark("knee", 811, 660).mark("ankle", 785, 808).mark("heel", 772, 833).mark("toe", 847, 840).mark("shoulder", 834, 527).mark("elbow", 820, 631).mark("wrist", 805, 736).mark("hand", 803, 758).mark("ear", 909, 472);
var fit = still.stanceWidth(cm(32)).turnOut(deg(14)).gripWidth(cm(55)).fit(liftee).towardsCamera().holding(barbell(kg(100)));
fit
fit.position().moments()
fit.picture()
fit.other()

// A squat of 1.6 s with 60 kg high on the back, landmarks seen from the side.
var seen = landmarks("pictures/squat-landmarks.csv").fit(liftee).holding(barbell(kg(60)).on(Site.UPPER_BACK_HIGH));
seen
var course = sweep(seen.movement(), 17);
course.sheet(HIP, KNEE)
course.against(KNEE).plot(HIP, KNEE)
