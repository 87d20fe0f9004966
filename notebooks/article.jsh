// An article for a lesson: text, tables and figures with their numbers, the method written from what was used.
// Invented for a lesson series of an amateur club's coach: lifter A, usual proportions; lifter B, long thighs.
// Run it:  java -jar target/leverbook.jar run notebooks/article.jsh --out target/article

// Two lifters of one mass and stature, one bar, hips where each of them starts.
var lifterA = person(MALE, kg(85), cm(178));
var lifterB = lifterA.longer(THIGH, percent(8));
var pullA = hinge(lifterA).holding(barbell(kg(100))).hipHeight(cm(60)).start();
var pullB = hinge(lifterB).holding(barbell(kg(100))).hipHeight(cm(60)).start();
var byHip = sweep("hip height", cm(52), cm(70), 10, h -> hinge(lifterA).holding(barbell(kg(100))).hipHeight(h).start());

// How far apart are the two at the low back and at the knees?
var back = Math.abs(pullB.moment(L5_S1).size() - pullA.moment(L5_S1).size());
var knees = pullB.moment(KNEE).size() - pullA.moment(KNEE).size();

// Numbers go into the text by value; {arms} and {heights} become the numbers of the figures.
var lesson = article("What the start of a hinge asks of the low back").by("Club coach, lesson 3; an invented example");
lesson = lesson.text("A bar hangs from straight arms. How hard the low back works then is a matter of *levers*: the weight, and how far its line passes in front of each joint. {arms} shows two lifters of the same mass and stature, hips equally high, the bar {} for both.", kg(100));

lesson = lesson.heading("Two builds, one bar");
lesson = lesson.figure("arms", beside(pullA, pullB).called("lifter A", "lifter B, long thighs").sameScale(), "Arms from the bar's line of force to the joints, hips at {}, to one scale.", cm(60));
lesson = lesson.text("At the low back lifter A has to hold {} and lifter B {}: {.0} N·m apart, hardly anything. It is the knees that tell the builds from each other, by {.0} N·m on each side. {moments} has the numbers.", pullA.moment(L5_S1), pullB.moment(L5_S1), back, knees);
lesson = lesson.table("moments", compare(pullA, pullB).called("lifter A", "lifter B").moments(HIP, KNEE, L5_S1, SHOULDER), "Moments of both lifters, and the second against the first.");

lesson = lesson.heading("Higher hips, longer arm");
lesson = lesson.figure("heights", byHip.plot(HIP, KNEE, L5_S1), "Moments of lifter A against the height of the hips.");
lesson = lesson.text("What matters more is where the hips start ({heights}). As they go up, the trunk comes nearer to level:\n\n- the low back bears more,\n- the knees are spared.");
lesson = lesson.note("Try it in the gym: *same bar, hips a hand's breadth higher*. Who notices it where?");
lesson = lesson.quote("I thought my thighs were the reason. It was my hips.", "lifter B, invented");
lesson

lesson.save("hinge-article")
