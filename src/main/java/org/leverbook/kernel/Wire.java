package org.leverbook.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;

/** Messages as frames and back. May be used by any thread. */
final class Wire {

  /** The version of the messaging protocol that is spoken. */
  static final String PROTOCOL = "5.4";

  private static final byte[] DELIMITER = "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII);

  private final Seal seal;
  private final Log log;
  private final String session = UUID.randomUUID().toString();
  private final String user = System.getProperty("user.name", "leverbook");
  private final AtomicLong count = new AtomicLong();

  Wire(Seal seal, Log log) {
    this.seal = seal;
    this.log = log;
  }

  /**
   * Reads a message.
   *
   * @param line where it came, for the log
   * @param frames all of it
   * @return the message; empty where it is none, is not signed, or came before
   */
  Optional<Message> read(String line, List<byte[]> frames) {
    int at = 0;
    while (at < frames.size() && !Arrays.equals(frames.get(at), DELIMITER)) {
      at++;
    }
    if (frames.size() < at + 6) {
      return dropped(line, "it has too few parts");
    }
    byte[] signature = frames.get(at + 1);
    List<byte[]> body = frames.subList(at + 2, at + 6);
    if (!seal.fits(signature, body)) {
      return dropped(line, "its signature is wrong");
    }
    if (!seal.isNew(signature)) {
      return dropped(line, "it came before");
    }
    try {
      JsonNode header = Json.read(body.get(0));
      JsonNode parent = Json.read(body.get(1));
      JsonNode metadata = Json.read(body.get(2));
      JsonNode content = Json.read(body.get(3));
      boolean named = header.path("msg_id").isTextual() && header.path("msg_type").isTextual();
      if (!named || !parent.isObject() || !metadata.isObject() || !content.isObject()) {
        return dropped(line, "its header or content is no object of the protocol");
      }
      List<byte[]> identities = List.copyOf(frames.subList(0, at));
      return Optional.of(
          new Message(identities, (ObjectNode) header, parent, (ObjectNode) content));
    } catch (IOException e) {
      return dropped(line, "it is no JSON");
    }
  }

  private Optional<Message> dropped(String line, String reason) {
    log.say("A message on the " + line + " line was dropped: " + reason + ".");
    return Optional.empty();
  }

  /**
   * Writes a message.
   *
   * @param to the first frames: whom it is for, or its topic
   * @param type what kind of message
   * @param parent the header of the request it belongs to; an empty object where to none
   * @param content what it says
   * @return all frames
   */
  List<byte[]> write(List<byte[]> to, String type, JsonNode parent, JsonNode content) {
    ObjectNode header = Json.object();
    header.put("msg_id", session + "_" + count.incrementAndGet());
    header.put("session", session);
    header.put("username", user);
    header.put("date", Instant.now().truncatedTo(ChronoUnit.MICROS).toString());
    header.put("msg_type", type);
    header.put("version", PROTOCOL);
    List<byte[]> body =
        List.of(
            Json.write(header), Json.write(parent), Json.write(Json.object()), Json.write(content));
    List<byte[]> frames = new ArrayList<>(to);
    frames.add(DELIMITER);
    frames.add(seal.of(body).getBytes(StandardCharsets.US_ASCII));
    frames.addAll(body);
    return frames;
  }
}
