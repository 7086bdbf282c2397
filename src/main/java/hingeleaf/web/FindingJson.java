package hingeleaf.web;

import hingeleaf.finding.Place;
import hingeleaf.finding.Problem;
import hingeleaf.mend.Mends;
import java.util.List;
import java.util.Locale;

/** What was found, gravest first. */
final class FindingJson {
  private FindingJson() {}

  static void write(JsonOut out, List<Problem> problems) {
    out.each("findings", problems, p -> one(out, p));
  }

  private static void one(JsonOut out, Problem p) {
    out.put("kind", p.kind()).put("level", p.level().name().toLowerCase(Locale.ROOT));
    out.put("part", p.part()).put("origin", p.origin()).put("message", p.message());
    Place place = p.place();
    if (place == null) {
      out.nothing("place");
    } else {
      out.put("place", place.toString());
    }
    out.put("mendable", Mends.hoped(p));
  }
}
