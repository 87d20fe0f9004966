package org.leverbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Value;

/** Someone who types at a desk and reads what comes. */
final class Typed implements AutoCloseable {

  final Desk desk = Desk.open();

  /** Types an input that works; gives the texts of its values, and its notes. */
  List<String> works(String text) {
    List<String> read = new ArrayList<>();
    Evaluation evaluation = desk.evaluate(text, value -> read.add(value.text()));
    assertThat(evaluation.problem()).as(text).isEmpty();
    read.addAll(evaluation.notes());
    return read;
  }

  /** Types an input of which the last value is of interest. */
  String answer(String text) {
    List<String> read = works(text);
    return read.get(read.size() - 1);
  }

  /** Types an input that fails; gives the sentence. */
  String fails(String text) {
    Evaluation evaluation = desk.evaluate(text, Value::text);
    assertThat(evaluation.problem()).as(text).isPresent();
    return evaluation.problem().get().message();
  }

  @Override
  public void close() {
    desk.close();
  }
}
