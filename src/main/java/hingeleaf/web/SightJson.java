package hingeleaf.web;

import hingeleaf.geom.Region;
import hingeleaf.measure.MakerUnits;
import hingeleaf.pack.Eye;
import hingeleaf.pack.EyeSight;
import hingeleaf.pack.Pack;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;

/** What an eye sees: sentences, and what to mark on which panel of the scene. */
final class SightJson {
  /** How far the eye of the grid is moved to either side, degrees. */
  private static final int GRID = 20;

  private static final double NEAREST_MM = 50;
  private static final double FARTHEST_MM = 5000;
  private static final int WIDEST = 60;

  private final JsonOut out;
  private final Pack pack;

  private SightJson(JsonOut out, Pack pack) {
    this.out = out;
    this.pack = pack;
  }

  /** The eye that a request tells, held at arm's length where it does not say. */
  static Eye eye(Context c) {
    return new Eye(angle(c, "right"), angle(c, "above"), distance(c));
  }

  private static double angle(Context c, String key) {
    String asked = c.queryParam(key);
    if (asked == null) {
      return 0;
    }
    if (!asked.matches("-?\\d{1,2}(\\.\\d{1,3})?")
        || Math.abs(Double.parseDouble(asked)) > WIDEST) {
      throw new Refusal(422, "the eye can be moved up to " + WIDEST + " degrees to a side");
    }
    return Math.toRadians(Double.parseDouble(asked));
  }

  static double distance(Context c) {
    String asked = c.queryParam("distance");
    if (asked == null) {
      return Eye.HELD_MM;
    }
    if (asked.equals("far")) {
      return Double.POSITIVE_INFINITY;
    }
    double mm = asked.matches("\\d{1,4}(\\.\\d{1,3})?") ? Double.parseDouble(asked) : 0;
    if (mm < NEAREST_MM || mm > FARTHEST_MM) {
      throw new Refusal(
          422, "the eye is " + (int) NEAREST_MM + " to " + (int) FARTHEST_MM + " mm away, or far");
    }
    return mm;
  }

  static String text(Pack pack, Eye eye) {
    EyeSight.Answer answer = EyeSight.of(pack, eye);
    return JsonOut.object(
        out -> {
          SightJson json = new SightJson(out, pack);
          List<Runnable> seen = new ArrayList<>();
          answer.parts().forEach(p -> seen.add(() -> json.part(p)));
          answer.tabs().forEach(t -> seen.add(() -> json.tab(t)));
          out.each("seen", seen, Runnable::run);
        });
  }

  /** Straight on and from the sides, from above and from below: how much each complains of. */
  static String grid(Pack pack, double distance) {
    return JsonOut.object(
        out ->
            out.each(
                "cells",
                List.of(0, 1, 2, 3, 4, 5, 6, 7, 8),
                i -> {
                  int right = (i % 3 - 1) * GRID;
                  int above = (1 - i / 3) * GRID;
                  pack.goOn();
                  Eye eye = new Eye(Math.toRadians(right), Math.toRadians(above), distance);
                  out.put("right", right).put("above", above);
                  out.put("count", EyeSight.of(pack, eye).count());
                }));
  }

  private void part(EyeSight.Part p) {
    boolean shows = p.wanted().equals("hidden");
    long percent = Math.round(100 * (shows ? p.share() : 1 - p.share()));
    String much = percent >= 100 ? "all of it" : Math.max(1, percent) + " % of it";
    out.put("part", p.piece()).put("origin", p.origin()).put("kind", shows ? "shows" : "covered");
    out.put("words", p.name() + ": " + much + (shows ? " shows, and should not." : " is covered."));
    out.each("marks", p.covered().entrySet(), e -> mark(p.piece(), e.getKey(), e.getValue()));
  }

  private void tab(EyeSight.Tab t) {
    MakerUnits units = pack.inputs().wants().units();
    out.put("part", t.piece()).put("origin", pack.card().piece(t.piece()).origin());
    out.put("kind", "shows");
    out.put(
        "words",
        pack.card().piece(t.piece()).name()
            + ": its "
            + t.panel().replaceFirst("tab-", "")
            + " glue tab shows "
            + units.fine(t.shows())
            + " inside the opening.");
    out.each("marks", List.of(t), x -> mark(x.piece(), x.panel(), x.regions()));
  }

  private void mark(String piece, String panel, List<Region> regions) {
    out.put("piece", piece).put("panel", panel);
    out.list("regions", () -> regions.forEach(r -> out.item(() -> SceneJson.rings(out, r))));
  }
}
