package org.leverbook.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;

final class GridRate {
  private GridRate() {}

  static void measure(ObjectNode root) {}
}
