package org.leverbook.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Outputs as a notebook file holds them. */
final class OutputJson {

  private OutputJson() {}

  static ObjectNode of(Output output, OptionalInt count) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    if (output instanceof Output.Printed printed) {
      node.put("output_type", "stream").put("name", printed.stream()).put("text", printed.text());
    } else if (output instanceof Output.Given given) {
      node.put("output_type", given.isResult() ? "execute_result" : "display_data");
      ObjectNode data = node.putObject("data");
      given.bundle().data().forEach(data::put);
      node.putObject("metadata");
      if (given.isResult()) {
        putCount(node, count);
      }
    } else if (output instanceof Output.Failed failed) {
      node.put("output_type", "error").put("ename", failed.name()).put("evalue", failed.message());
      failed.trace().forEach(node.putArray("traceback")::add);
    }
    return node;
  }

  static void putCount(ObjectNode node, OptionalInt count) {
    if (count.isPresent()) {
      node.put("execution_count", count.getAsInt());
    } else {
      node.putNull("execution_count");
    }
  }

  /** The outputs of a cell; what is of no known kind is left out. */
  static List<Output> read(JsonNode outputs) {
    List<Output> read = new ArrayList<>();
    outputs.forEach(node -> one(node).ifPresent(read::add));
    return read;
  }

  private static Optional<Output> one(JsonNode node) {
    return switch (node.path("output_type").asText()) {
      case "stream" ->
          Optional.of(
              new Output.Printed(
                  node.path("name").asText("stdout"), Lines.joined(node.get("text")).orElse("")));
      case "display_data" -> Optional.of(new Output.Given(false, bundle(node.path("data"))));
      case "execute_result" -> Optional.of(new Output.Given(true, bundle(node.path("data"))));
      case "error" -> {
        List<String> trace = new ArrayList<>();
        node.path("traceback").forEach(line -> trace.add(line.asText()));
        yield Optional.of(
            new Output.Failed(node.path("ename").asText(), node.path("evalue").asText(), trace));
      }
      default -> Optional.empty();
    };
  }

  /** The forms of a value; what is JSON itself is kept as its text. */
  static MimeBundle bundle(JsonNode data) {
    Map<String, String> forms = new LinkedHashMap<>();
    data.properties()
        .forEach(
            form ->
                forms.put(
                    form.getKey(),
                    Lines.joined(form.getValue()).orElseGet(() -> form.getValue().toString())));
    return new MimeBundle(forms);
  }
}
