package org.leverbook.marks;

import java.util.Arrays;
import java.util.Optional;
import org.leverbook.body.Body;
import org.leverbook.body.Links;
import org.leverbook.body.Part;
import org.leverbook.body.Side;
import org.leverbook.solve.Feature;

/** A part of the body between two landmarks. */
enum Stretch {
  SHANK(Landmark.KNEE, Landmark.ANKLE, Part.SHANK),
  THIGH(Landmark.HIP, Landmark.KNEE, Part.THIGH),
  UPPER_ARM(Landmark.SHOULDER, Landmark.ELBOW, Part.UPPER_ARM),
  FOREARM(Landmark.ELBOW, Landmark.WRIST, Part.FOREARM);

  final Landmark from;
  final Landmark to;
  final Part part;

  Stretch(Landmark from, Landmark to, Part part) {
    this.from = from;
    this.to = to;
    this.part = part;
  }

  static Optional<Stretch> of(Part part) {
    return Arrays.stream(values()).filter(s -> s.part == part).findFirst();
  }

  double length(Links links) {
    return links.lengthOf(part);
  }

  /** The way from its one end to the other. */
  Feature on(Body body, Side side) {
    return new Feature.Way(from.on(body, side), to.on(body, side));
  }

  String word() {
    return switch (this) {
      case SHANK -> "shank";
      case THIGH -> "thigh";
      case UPPER_ARM -> "upper arm";
      case FOREARM -> "forearm";
    };
  }
}
