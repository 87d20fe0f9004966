package org.leverbook.pose;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Rotation matrices as nine doubles, row by row, for the inner loops; no object per rotation. */
final class Matrices {

  private Matrices() {}

  /** Writes the product a·b into out; out must be neither of them. */
  static void multiply(double[] a, int ia, double[] b, int ib, double[] out, int io) {
    for (int row = 0; row < 3; row++) {
      double a0 = a[ia + 3 * row];
      double a1 = a[ia + 3 * row + 1];
      double a2 = a[ia + 3 * row + 2];
      for (int col = 0; col < 3; col++) {
        out[io + 3 * row + col] = a0 * b[ib + col] + a1 * b[ib + 3 + col] + a2 * b[ib + 6 + col];
      }
    }
  }

  /** Writes the right-handed rotation about a unit vector (x, y, z) (Rodrigues' formula). */
  static void about(double x, double y, double z, double s, double c, double[] out, int o) {
    double v = 1 - c;
    out[o] = c + x * x * v;
    out[o + 1] = x * y * v - z * s;
    out[o + 2] = x * z * v + y * s;
    out[o + 3] = y * x * v + z * s;
    out[o + 4] = c + y * y * v;
    out[o + 5] = y * z * v - x * s;
    out[o + 6] = z * x * v - y * s;
    out[o + 7] = z * y * v + x * s;
    out[o + 8] = c + z * z * v;
  }

  static Vector3D apply(double[] m, int i, Vector3D v) {
    return new Vector3D(
        m[i] * v.getX() + m[i + 1] * v.getY() + m[i + 2] * v.getZ(),
        m[i + 3] * v.getX() + m[i + 4] * v.getY() + m[i + 5] * v.getZ(),
        m[i + 6] * v.getX() + m[i + 7] * v.getY() + m[i + 8] * v.getZ());
  }
}
