// Every lift of the library at start, middle and finish: worksheet, picture, and a table of all.
// Invented for a lesson series of an amateur club's coach: "lifter A, usual proportions".
// Run it:  java -jar target/leverbook.jar run notebooks/all-lifts.jsh --out target/lifts

var lifter = person(MALE, kg(85), cm(178));
var lifts  = allLifts(lifter);

// What there is, and what each is for.
lifts

// NAME-start.json, NAME-start.svg, and so on for middle and finish.
lifts.save()

// One row a lift: settings, source of the posture, held or not, balance.
lifts.table().save("lifts.csv")

// All on one sheet, start beside finish.
lifts.picture().save("all-lifts.pdf")
