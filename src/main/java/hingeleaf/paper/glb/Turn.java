package hingeleaf.paper.glb;

import hingeleaf.geom.Rigid;

/**
 * A rotation as a unit quaternion, vector part first, as glTF writes it.
 *
 * @param w scalar part
 */
record Turn(double x, double y, double z, double w) {
  /**
   * The rotation of a motion, by the largest of four candidates (Shepperd, Quaternion from rotation
   * matrix, Journal of Guidance and Control 1, 1978).
   */
  static Turn of(Rigid m) {
    double t = m.xx() + m.yy() + m.zz();
    if (t >= Math.max(m.xx(), Math.max(m.yy(), m.zz()))) {
      return unit(m.zy() - m.yz(), m.xz() - m.zx(), m.yx() - m.xy(), 1 + t);
    }
    if (m.xx() >= Math.max(m.yy(), m.zz())) {
      return unit(1 + 2 * m.xx() - t, m.yx() + m.xy(), m.xz() + m.zx(), m.zy() - m.yz());
    }
    if (m.yy() >= m.zz()) {
      return unit(m.yx() + m.xy(), 1 + 2 * m.yy() - t, m.zy() + m.yz(), m.xz() - m.zx());
    }
    return unit(m.xz() + m.zx(), m.zy() + m.yz(), 1 + 2 * m.zz() - t, m.yx() - m.xy());
  }

  private static Turn unit(double x, double y, double z, double w) {
    double n = Math.sqrt(x * x + y * y + z * z + w * w);
    return new Turn(x / n, y / n, z / n, w / n);
  }

  /** The same rotation with the sign that lies nearer to another, so that players turn little. */
  Turn near(Turn o) {
    return x * o.x + y * o.y + z * o.z + w * o.w < 0 ? new Turn(-x, -y, -z, -w) : this;
  }
}
