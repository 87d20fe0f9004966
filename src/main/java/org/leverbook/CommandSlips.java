package org.leverbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.leverbook.data.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.MutuallyExclusiveArgsException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is told of a command that was typed wrong: a sentence, and where to read more. */
final class CommandSlips implements IParameterExceptionHandler {

  @Override
  public int handleParseException(ParameterException slip, String[] arguments) {
    CommandLine asked = slip.getCommandLine();
    asked.getErr().println(sentence(slip));
    asked.getErr().println(called(asked) + " --help tells what there is.");
    return asked.getCommandSpec().exitCodeOnInvalidInput();
  }

  private static String sentence(ParameterException slip) {
    CommandSpec command = slip.getCommandLine().getCommandSpec();
    if (slip instanceof UnmatchedArgumentException unmatched) {
      return tooMuch(command, unmatched.getUnmatched().get(0));
    }
    if (slip instanceof MutuallyExclusiveArgsException) {
      return "Only one of these can be said at once: " + options(command) + ".";
    }
    String name = called(slip.getCommandLine());
    if (slip instanceof MissingParameterException missing) {
      return name
          + " also needs "
          + missing.getMissing().stream()
              .map(CommandSlips::needed)
              .collect(Collectors.joining(" and "))
          + ".";
    }
    ArgSpec argument = slip.getArgSpec();
    if (argument != null && argument.completionCandidates() != null && slip.getValue() != null) {
      List<String> choices = new ArrayList<>();
      argument.completionCandidates().forEach(choices::add);
      return word(argument) + " takes " + choice(choices) + ", not \"" + slip.getValue() + "\".";
    }
    // What a converter said, without what the parser puts before it.
    String said = slip.getMessage().replaceAll("^Invalid value for [^:]*: ", "");
    return said.endsWith(".") ? said : said + ".";
  }

  /** A word that nothing here takes. */
  private static String tooMuch(CommandSpec command, String word) {
    String name = called(command.commandLine());
    boolean option = word.startsWith("-");
    if (!option && command.subcommands().isEmpty()) {
      return name + " takes one file; \"" + word + "\" is more than it takes.";
    }
    List<String> known =
        option
            ? command.options().stream().map(OptionSpec::longestName).toList()
            : List.copyOf(command.subcommands().keySet());
    List<String> near = Nearest.of(word, known);
    return name
        + (option ? " has no option \"" : " has no command \"")
        + word
        + "\""
        + (near.isEmpty()
            ? "; it has " + String.join(", ", known) + "."
            : ": did you mean " + choice(near) + "?");
  }

  private static String needed(ArgSpec argument) {
    return argument.isOption()
        ? word(argument) + "=" + argument.paramLabel()
        : argument.paramLabel().equals("FILE")
            ? "a file, such as lesson.jsh"
            : argument.paramLabel();
  }

  private static String options(CommandSpec command) {
    return command.argGroups().stream()
        .flatMap(group -> group.allOptionsNested().stream())
        .map(OptionSpec::longestName)
        .collect(Collectors.joining(", "));
  }

  private static String word(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }

  private static String choice(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
  }

  private static String called(CommandLine command) {
    return command.getCommandSpec().qualifiedName();
  }
}
