package hingeleaf.sheet.bound;

import java.util.ArrayList;
import java.util.List;

/**
 * The covering linear program of column generation by the revised simplex method with an explicit
 * inverse: least cost, every demand covered, no stock used beyond its limit. Columns are added
 * while it runs and the basis is kept.
 */
public final class ColumnLp {
  /** A sheet's content: its stock's price, limit row (or -1), rows covered and how often. */
  public record Column(double cost, int limitRow, int[] rows, int[] times) {}

  private static final double SMALL = 1e-9;
  private final int demands;
  private final int m;
  private final double[][] inverse;
  private final double[] x;
  private final double[] costs;
  private final int[] basic;
  private final double[] duals;
  private final double[] direction;
  private final List<Column> columns = new ArrayList<>();

  /**
   * @param demand how often each row is to be covered
   * @param limits how many sheets each limit row allows
   * @param penalty cost of one missing piece, well above what a sheet costs
   */
  public ColumnLp(int[] demand, int[] limits, double penalty) {
    demands = demand.length;
    m = demands + limits.length;
    inverse = new double[m][m];
    x = new double[m];
    costs = new double[m];
    basic = new int[m];
    duals = new double[m];
    direction = new double[m];
    for (int i = 0; i < m; i++) {
      inverse[i][i] = 1;
      boolean isDemand = i < demands;
      x[i] = isDemand ? demand[i] : limits[i - demands];
      costs[i] = isDemand ? penalty : 0;
      basic[i] = -1 - i;
    }
    price();
  }

  private void price() {
    for (int j = 0; j < m; j++) {
      double sum = 0;
      for (int i = 0; i < m; i++) {
        if (costs[i] != 0) {
          sum += costs[i] * inverse[i][j];
        }
      }
      duals[j] = sum;
    }
  }

  /** Price of covering row {@code i} once, at the present basis. */
  public double dual(int i) {
    return duals[i];
  }

  /** Price of one more sheet of a limited stock (never positive at the optimum). */
  public double limitDual(int row) {
    return duals[demands + row];
  }

  /** Cost less the worth of what it covers; negative when it should come in. */
  public double reducedCost(Column c) {
    double sum = c.cost() - (c.limitRow() < 0 ? 0 : limitDual(c.limitRow()));
    for (int k = 0; k < c.rows().length; k++) {
      sum -= duals[c.rows()[k]] * c.times()[k];
    }
    return sum;
  }

  /** Brings a column into the basis; it must have negative reduced cost. */
  public void enter(Column c) {
    for (int i = 0; i < m; i++) {
      double sum = c.limitRow() < 0 ? 0 : inverse[i][demands + c.limitRow()];
      for (int k = 0; k < c.rows().length; k++) {
        sum += inverse[i][c.rows()[k]] * c.times()[k];
      }
      direction[i] = sum;
    }
    columns.add(c);
    pivot(c.cost(), columns.size() - 1);
  }

  /** Brings surpluses and slacks in while that helps, at most {@code most} times. */
  public void settle(int most) {
    for (int n = 0; n < most; n++) {
      int row = -1;
      double worst = -SMALL;
      for (int i = 0; i < m; i++) {
        double reduced = i < demands ? duals[i] : -duals[i];
        if (reduced < worst) {
          worst = reduced;
          row = i;
        }
      }
      if (row < 0) {
        return;
      }
      double sign = row < demands ? -1 : 1;
      for (int i = 0; i < m; i++) {
        direction[i] = sign * inverse[i][row];
      }
      if (!pivot(0, -1 - m - row)) {
        return;
      }
    }
  }

  private boolean pivot(double cost, int id) {
    int leave = -1;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < m; i++) {
      if (direction[i] > SMALL) {
        double ratio = x[i] / direction[i];
        boolean better =
            ratio < least - 1e-12
                || (leave >= 0 && ratio < least + 1e-12 && direction[i] > direction[leave]);
        if (better) {
          least = Math.min(ratio, least);
          leave = i;
        }
      }
    }
    if (leave < 0) {
      return false;
    }
    double theta = Math.max(0, x[leave] / direction[leave]);
    double[] pivotRow = inverse[leave];
    double by = 1 / direction[leave];
    for (int j = 0; j < m; j++) {
      pivotRow[j] *= by;
    }
    for (int i = 0; i < m; i++) {
      double d = direction[i];
      if (i != leave && d != 0) {
        double[] row = inverse[i];
        for (int j = 0; j < m; j++) {
          row[j] -= d * pivotRow[j];
        }
        x[i] = Math.max(0, x[i] - theta * d);
      }
    }
    x[leave] = theta;
    costs[leave] = cost;
    basic[leave] = id;
    price();
    return true;
  }

  /** The value of the present basis. */
  public double value() {
    double sum = 0;
    for (int i = 0; i < m; i++) {
      sum += costs[i] * x[i];
    }
    return sum;
  }

  /** How many of each entered column the present basis takes, in the order of entering. */
  public double[] weights() {
    double[] result = new double[columns.size()];
    for (int i = 0; i < m; i++) {
      if (basic[i] >= 0) {
        result[basic[i]] += x[i];
      }
    }
    return result;
  }

  /** The entered columns. */
  public List<Column> columns() {
    return columns;
  }
}
