package org.leverbook.pose;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Rotation matrices as nine doubles, row by row, for the inner loops; no object per rotation. */
final class Matrices {

  private Matrices() {}

  static double[] identity() {
    return new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1};
  }

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

  /** Writes the right-handed rotation by an angle about a unit vector (Rodrigues' formula). */
  static void about(Vector3D axis, double angle, double[] out) {
    double x = axis.getX();
    double y = axis.getY();
    double z = axis.getZ();
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    double v = 1 - c;
    out[0] = c + x * x * v;
    out[1] = x * y * v - z * s;
    out[2] = x * z * v + y * s;
    out[3] = y * x * v + z * s;
    out[4] = c + y * y * v;
    out[5] = y * z * v - x * s;
    out[6] = z * x * v - y * s;
    out[7] = z * y * v + x * s;
    out[8] = c + z * z * v;
  }

  static Vector3D apply(double[] m, int i, Vector3D v) {
    return new Vector3D(
        m[i] * v.getX() + m[i + 1] * v.getY() + m[i + 2] * v.getZ(),
        m[i + 3] * v.getX() + m[i + 4] * v.getY() + m[i + 5] * v.getZ(),
        m[i + 6] * v.getX() + m[i + 7] * v.getY() + m[i + 8] * v.getZ());
  }
}
