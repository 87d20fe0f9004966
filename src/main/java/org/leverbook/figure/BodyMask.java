package org.leverbook.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;

/** How much of a box lies over drawn shapes, from sums over a coarse raster of a room. */
final class BodyMask {

  private static final double CELL = 4;

  private final Rectangle2D room;
  private final int[][] sums;

  BodyMask(Rectangle2D room, List<? extends Shape> shapes) {
    this.room = room;
    int columns = (int) Math.ceil(room.getWidth() / CELL);
    int rows = (int) Math.ceil(room.getHeight() / CELL);
    BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D page = image.createGraphics();
    page.scale(1 / CELL, 1 / CELL);
    page.translate(-room.getX(), -room.getY());
    page.setColor(Color.WHITE);
    shapes.forEach(page::fill);
    page.dispose();
    sums = new int[rows + 1][columns + 1];
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        int covered = image.getRaster().getSample(c, r, 0) > 0 ? 1 : 0;
        sums[r + 1][c + 1] = sums[r][c + 1] + sums[r + 1][c] - sums[r][c] + covered;
      }
    }
  }

  /** The covered share of a box, 0 to 1. */
  double share(Rectangle2D box) {
    int columns = sums[0].length - 1;
    int rows = sums.length - 1;
    int left = cell(box.getMinX() - room.getMinX(), columns - 1);
    int right = Math.max(left + 1, cell(box.getMaxX() - room.getMinX(), columns));
    int top = cell(box.getMinY() - room.getMinY(), rows - 1);
    int bottom = Math.max(top + 1, cell(box.getMaxY() - room.getMinY(), rows));
    int covered = sums[bottom][right] - sums[top][right] - sums[bottom][left] + sums[top][left];
    return covered / (double) ((right - left) * (bottom - top));
  }

  private static int cell(double offset, int most) {
    return Math.max(0, Math.min(most, (int) Math.round(offset / CELL)));
  }
}
