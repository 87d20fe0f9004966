package org.leverbook.kernel;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Signs messages with HMAC-SHA256 and knows those that came already. May be used by any thread. */
final class Seal {

  /** How many signatures are remembered. A message sent again later than this would run twice. */
  private static final int REMEMBERED = 20_000;

  private final SecretKeySpec key;
  private final Set<String> seen = new LinkedHashSet<>();

  /** A seal of a secret; with an empty one nothing is signed or checked. */
  Seal(byte[] secret) {
    this.key = secret.length == 0 ? null : new SecretKeySpec(secret, "HmacSHA256");
  }

  /** The signature of frames in their order, in lower-case hexadecimal digits. */
  String of(List<byte[]> frames) {
    if (key == null) {
      return "";
    }
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(key);
      frames.forEach(mac::update);
      return HexFormat.of().formatHex(mac.doFinal());
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Whether the signature is the frames' own. Takes as long for a wrong one as for a right one. */
  boolean fits(byte[] signature, List<byte[]> frames) {
    return key == null
        || MessageDigest.isEqual(of(frames).getBytes(StandardCharsets.US_ASCII), signature);
  }

  /** Whether a signature comes for the first time. */
  synchronized boolean isNew(byte[] signature) {
    if (key == null) {
      return true;
    }
    boolean added = seen.add(new String(signature, StandardCharsets.US_ASCII));
    if (seen.size() > REMEMBERED) {
      seen.remove(seen.iterator().next());
    }
    return added;
  }
}
