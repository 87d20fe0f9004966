package org.leverbook.terminal;

import java.util.Map;
import java.util.function.Supplier;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedStyle;
import org.jline.utils.InfoCmp.Capability;
import org.leverbook.display.Preferences;

/** The colours of the shell: those of the user's theme, as far as the terminal has them. */
final class Palette {

  /** What a piece of text is. */
  enum Role {
    PROMPT,
    KEYWORD,
    TEXT,
    NUMBER,
    COMMENT,
    WORD,
    MATE,
    LONELY,
    ERROR,
    ASIDE,
    CURRENT
  }

  private static final AttributedStyle PLAIN = AttributedStyle.DEFAULT;
  private static final int FEWEST_COLOURS = 8;
  private static final int MANY_COLOURS = 256;

  private final Terminal terminal;
  private final boolean unwanted;
  private final Supplier<Preferences> looks;

  /**
   * A palette.
   *
   * @param terminal where it is used
   * @param environment the environment variables; {@code NO_COLOR} is one
   * @param looks the wish, asked again each time
   */
  Palette(Terminal terminal, Map<String, String> environment, Supplier<Preferences> looks) {
    this.terminal = terminal;
    this.unwanted = !environment.getOrDefault("NO_COLOR", "").isEmpty();
    this.looks = looks;
  }

  /** How many colours may be used; 0 where none. */
  int colours() {
    Integer most = terminal.getNumericCapability(Capability.max_colors);
    boolean none = unwanted || isDumb() || looks.get().theme() == Preferences.Theme.NONE;
    return none || most == null || most < FEWEST_COLOURS ? 0 : most;
  }

  /** Whether a picture may use colours between the basic ones. */
  boolean hasManyColours() {
    return colours() >= MANY_COLOURS;
  }

  /** Whether the terminal knows nothing but letters. */
  boolean isDumb() {
    return terminal.getType().startsWith(Terminal.TYPE_DUMB);
  }

  /** The style of a role; where colours are off, only what is no colour. */
  AttributedStyle style(Role role) {
    if (isDumb()) {
      return PLAIN;
    }
    return colours() == 0 ? colourless(role) : coloured(role);
  }

  private static AttributedStyle colourless(Role role) {
    return switch (role) {
      case MATE, CURRENT -> PLAIN.bold().underline();
      case ASIDE -> PLAIN.faint();
      default -> PLAIN;
    };
  }

  private AttributedStyle coloured(Role role) {
    boolean dark = looks.get().theme() == Preferences.Theme.DARK;
    return switch (role) {
      case PROMPT -> PLAIN.bold().foreground(AttributedStyle.CYAN);
      case KEYWORD -> PLAIN.foreground(AttributedStyle.MAGENTA);
      case TEXT -> PLAIN.foreground(AttributedStyle.GREEN);
      case NUMBER -> PLAIN.foreground(dark ? AttributedStyle.YELLOW : AttributedStyle.BLUE);
      case COMMENT, ASIDE ->
          dark ? PLAIN.foreground(AttributedStyle.BRIGHT + AttributedStyle.BLACK) : PLAIN.faint();
      case WORD -> PLAIN.foreground(dark ? AttributedStyle.CYAN : AttributedStyle.BLUE).bold();
      case MATE, CURRENT -> PLAIN.bold().underline();
      case LONELY, ERROR -> PLAIN.foreground(AttributedStyle.RED);
    };
  }
}
