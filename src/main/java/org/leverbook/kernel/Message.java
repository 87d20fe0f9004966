package org.leverbook.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * A message that came in.
 *
 * @param identities whom to send the answer to
 * @param header its header: msg_id and msg_type are texts
 * @param parent the header of the message it answers; empty where it answers none
 * @param content what it says
 */
record Message(List<byte[]> identities, ObjectNode header, JsonNode parent, ObjectNode content) {

  /** What kind of message it is. */
  String type() {
    return Json.text(header, "msg_type");
  }

  /** Who sent it. */
  String session() {
    return Json.text(header, "session");
  }
}
