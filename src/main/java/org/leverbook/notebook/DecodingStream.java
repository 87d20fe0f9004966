package org.leverbook.notebook;

import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/** Bytes in UTF-8 as texts; a letter whose bytes come in two writes stays whole. */
final class DecodingStream extends OutputStream {

  private final Consumer<String> texts;
  private final CharsetDecoder decoder =
      StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPLACE)
          .onUnmappableCharacter(CodingErrorAction.REPLACE);
  private ByteBuffer rest = ByteBuffer.allocate(0);

  DecodingStream(Consumer<String> texts) {
    this.texts = texts;
  }

  @Override
  public void write(int b) {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public synchronized void write(byte[] bytes, int from, int length) {
    ByteBuffer in = ByteBuffer.allocate(rest.remaining() + length).put(rest);
    in.put(bytes, from, length).flip();
    CharBuffer out = CharBuffer.allocate(in.remaining() + 1);
    decoder.decode(in, out, false);
    rest = in.slice();
    texts.accept(out.flip().toString());
  }
}
