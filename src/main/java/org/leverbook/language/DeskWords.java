package org.leverbook.language;

import org.leverbook.display.OnStage;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.display.Stage;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/** The words about the session itself; {@link Vocabulary} hands them on. */
public abstract sealed class DeskWords extends ArticleWords permits Vocabulary {

  DeskWords() {}

  /**
   * Shows a value at once, also in the middle of a loop, as in {@code display(start.picture())}.
   *
   * @param value any value
   * @return its place; {@code .update(other)} shows another value there
   */
  public static OnStage display(Object value) {
    return Stage.show(value);
  }

  /**
   * All words by theme, each with an example, as in {@code words()}.
   *
   * @return a long text
   */
  public static Help words() {
    return Help.words();
  }

  /**
   * The words of one theme, as in {@code words("loads")}.
   *
   * @param theme a theme that {@code help()} lists
   * @return a text
   * @throws Refused if there is no such theme; says which there are
   */
  public static Help words(String theme) {
    return Help.words(Ask.present("theme", theme, "\"loads\""));
  }

  /**
   * The terms of the trade, as in {@code glossary()}; {@code help("moment arm")} tells what one
   * means.
   *
   * @return their names
   */
  public static Glossary glossary() {
    return Glossary.all();
  }

  /**
   * The list of ready code, as in {@code examples()}.
   *
   * @return a row each
   */
  public static Sheet examples() {
    return Example.list();
  }

  /**
   * Ready code, as in {@code example("hinge")}. In the shell it stands at the prompt then, and
   * Enter runs it; elsewhere it is printed.
   *
   * @param name a name from {@code examples()}
   * @return the code
   * @throws Refused if there is none of that name; says the nearest
   */
  public static Example example(String name) {
    Example found = Example.named(Ask.present("name", name, "\"hinge\""));
    return Doorways.here().offer(found.code()) ? found.inPlace() : found;
  }

  /**
   * Your own variables, methods and classes, as in {@code mine()}.
   *
   * @return a row each: name, kind, and what it is
   */
  public static Sheet mine() {
    return Doorways.here().mine();
  }

  /**
   * Takes back the last input that worked, as in {@code undo()}: what it declared goes, what it
   * replaced comes back. Say it again to take back the one before. In one text of many statements
   * it takes back the statement before. Saved files and printed lines stay.
   */
  public static void undo() {
    Doorways.here().undo();
  }

  /** Runs the last input again, as in {@code again()}. */
  public static void again() {
    Doorways.here().again(0);
  }

  /**
   * Runs an input again, as in {@code again(1)}.
   *
   * @param number its number in {@code inputs()}
   * @throws Refused if there is none of that number
   */
  public static void again(int number) {
    if (number < 1) {
      throw new Refused("Inputs are counted from 1; " + number + " was asked for.");
    }
    Doorways.here().again(number);
  }

  /**
   * What was typed so far, with numbers, as in {@code inputs()}.
   *
   * @return a row for each input, with what came of it
   */
  public static Sheet inputs() {
    return Doorways.here().inputs();
  }

  /**
   * Saves what worked, in order, as in {@code save("lesson.jsh")}: a script, or a notebook where
   * the name ends in {@code .ipynb}. What failed, was taken back or was about the session itself is
   * left out, so that the file runs again with the same results.
   *
   * @param name a file name that ends in {@code .jsh} or {@code .ipynb}
   * @return what was written
   * @throws Refused if nothing worked yet, the name has another ending, or the disk says no
   */
  public static Saved save(String name) {
    return Doorways.here().save(Ask.present("file name", name, "\"lesson.jsh\""));
  }

  /**
   * Runs a script in this session, or the code of a notebook, as in {@code load("lesson.jsh")}.
   * What it declares is there for the next statement.
   *
   * @param name a file name that ends in {@code .jsh} or {@code .ipynb}; looked for where files are
   *     saved, then in the working folder
   * @throws Refused if there is none, or it is no such file
   */
  public static void load(String name) {
    Doorways.here().load(Ask.present("file name", name, "\"lesson.jsh\""));
  }

  /**
   * How answers are shown, and how to change that, as in {@code preferences().pounds()}.
   *
   * @return what is chosen; pounds(), kilograms(), digits(2), dark(), light(), plain()
   */
  public static Choices preferences() {
    return Choices.current();
  }

  /**
   * The last failure in full, as in {@code trace()}: for whoever looks into the program.
   *
   * @return the stack of what was thrown
   * @throws Refused if nothing has failed
   */
  public static Shown trace() {
    return Doorways.here().trace();
  }

  /**
   * What the Java compiler itself said of the last failure, as in {@code original()}.
   *
   * @return its words
   * @throws Refused if nothing has failed, or the compiler had nothing to say
   */
  public static Shown original() {
    return Doorways.here().original();
  }

  /**
   * The guided first lesson in ten steps, as in {@code lesson()}. It looks at what you type, and
   * goes on when it does what the step asks for; {@code lesson().hint()} helps, {@code
   * lesson().leave()} ends it.
   *
   * @return the step where it stands
   */
  public static Lesson lesson() {
    return Doorways.here().lesson();
  }
}
