// A still of a deadlift and a squat over time, both drawn or computed from poses of our own:
// nobody was photographed. Run it from the folder of the README.
var liftee = person(MALE, kg(85), cm(178));

// Marks as a coach reads them off, in pixels; the scale is a rod of one metre beside the lifter.
var still = photo("notebooks/pictures/deadlift-still.png").scale(800, 774, 800, 426, m(1)).distance(m(5)).mark("hip", 712, 619).mark("knee", 791, 668).mark("ankle", 780, 804).mark("heel", 767, 829).mark("toe", 842, 836).mark("shoulder", 831, 524).mark("elbow", 816, 627).mark("wrist", 800, 732).mark("hand", 799, 754).mark("ear", 894, 448);
var fit = still.stanceWidth(cm(32)).turnOut(deg(14)).gripWidth(cm(55)).fit(liftee).towardsCamera().holding(barbell(kg(100)));
fit
fit.position().moments()
fit.picture()
fit.other()

// A squat of 1.6 s with 60 kg high on the back, landmarks seen from the side.
var seen = landmarks("notebooks/pictures/squat-landmarks.csv").fit(liftee).holding(barbell(kg(60)).on(Site.UPPER_BACK_HIGH));
seen
var course = sweep(seen.movement(), 17);
course.sheet(HIP, KNEE)
course.against(KNEE).plot(HIP, KNEE)
