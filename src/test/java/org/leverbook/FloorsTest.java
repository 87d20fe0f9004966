package org.leverbook;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;

/** The floor plan of the house: each room knows only the rooms above it in the list. */
@AnalyzeClasses(packages = "org.leverbook", importOptions = ImportOption.DoNotIncludeTests.class)
class FloorsTest {

  private static final List<String> ROOMS =
      List.of(
          "quantity",
          "data",
          "display",
          "body",
          "pose",
          "muscle",
          "strength",
          "solve",
          "load",
          "support",
          "statics",
          "lever",
          "lift",
          "marks",
          "study",
          "figure",
          "article",
          "notebook",
          "language",
          "session",
          "desk",
          "archive",
          "script",
          "terminal",
          "kernel");

  private static final String ROOT = "org.leverbook.";

  @ArchTest
  void each_room_knows_only_the_rooms_above_it(com.tngtech.archunit.core.domain.JavaClasses house) {
    for (int i = 0; i < ROOMS.size(); i++) {
      String[] below =
          ROOMS.subList(i + 1, ROOMS.size()).stream()
              .map(r -> ROOT + r + "..")
              .toArray(String[]::new);
      if (below.length > 0) {
        noClasses()
            .that()
            .resideInAPackage(ROOT + ROOMS.get(i) + "..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(below)
            .allowEmptyShould(true)
            .check(house);
      }
    }
  }

  @ArchTest
  void every_class_lives_in_a_room(com.tngtech.archunit.core.domain.JavaClasses house) {
    String[] rooms = ROOMS.stream().map(r -> ROOT + r + "..").toArray(String[]::new);
    classes()
        .that()
        .resideOutsideOfPackages("org.leverbook", "org.leverbook.launch")
        .should()
        .resideInAnyPackage(rooms)
        .check(house);
  }

  @ArchTest
  static final ArchRule rooms_do_not_know_each_other_in_circles =
      slices().matching("org.leverbook.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule tables_begin_at_study =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "org.leverbook.study..",
              "org.leverbook.figure..",
              "org.leverbook.language..",
              "org.leverbook.terminal..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("tech.tablesaw..");

  @ArchTest
  static final ArchRule charts_are_drawn_in_figure =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.leverbook.figure..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.knowm.xchart..");

  @ArchTest
  static final ArchRule the_session_knows_no_mechanics =
      noClasses()
          .that()
          .resideInAPackage("org.leverbook.session..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.leverbook.body..",
              "org.leverbook.pose..",
              "org.leverbook.solve..",
              "org.leverbook.load..",
              "org.leverbook.support..",
              "org.leverbook.statics..",
              "org.leverbook.muscle..",
              "org.leverbook.strength..",
              "org.leverbook.lever..",
              "org.leverbook.lift..",
              "org.leverbook.study..");

  @ArchTest
  static final ArchRule only_the_session_speaks_to_the_compiler =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.leverbook.session..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("jdk.jshell..", "javax.tools..", "org.objectweb.asm..");
}
