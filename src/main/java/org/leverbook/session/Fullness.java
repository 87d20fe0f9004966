package org.leverbook.session;

/**
 * How full the memory was when a text was stopped for it.
 *
 * @param used what was in use and could not be let go, in bytes
 * @param most what may be in use, in bytes
 */
record Fullness(long used, long most) {

  static final long MB = 1L << 20;

  /** All that may be in use: somebody else asked for more. */
  static Fullness whole() {
    long most = Runtime.getRuntime().maxMemory();
    return new Fullness(most, most);
  }

  /** In words: "209 of 247 MB". */
  String words() {
    return used / MB + " of " + most / MB + " MB";
  }
}
