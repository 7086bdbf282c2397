package hingeleaf.pack;

import hingeleaf.card.Card;
import hingeleaf.card.Flats;
import hingeleaf.card.Join;
import hingeleaf.card.Rest;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.fold.FlatStates;
import hingeleaf.fold.FoldForward;
import hingeleaf.post.PostFindings;
import hingeleaf.post.PostWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the post has to say of a card, with the raise that would make it cheaper. */
final class PostWants {
  /** A raise is told on this step, mm: no foam is bought finer. */
  private static final double STEP_MM = 0.1;

  private PostWants() {}

  /** Nothing where the bench names no country: nobody knows which post it is. */
  static List<Problem> of(Pack pack) {
    if (pack.inputs().bench().country().isEmpty()) {
      return List.of();
    }
    Postage.Offer offer = pack.posting().first();
    PostWords words = new PostWords(pack.inputs().bench().inches());
    List<Problem> all = new ArrayList<>();
    for (Problem p : PostFindings.of(offer.best().decision(), pack.posting().packing(), words)) {
      Double pile = p.numbers().get("pile");
      if (pile != null && offer.rest() >= 0) {
        all.add(lowering(pack, offer, p, pile).orElse(p));
      } else {
        all.add(p);
      }
    }
    return all;
  }

  /** The raise that, lowered alone, brings the pile down far enough; tried, not guessed. */
  private static Optional<Problem> lowering(
      Pack pack, Postage.Offer offer, Problem problem, double pile) {
    double excess = offer.parcel().rigid() - pile;
    List<Join.Glue> raised =
        glues(pack.card()).stream()
            .filter(g -> g.raisedBy() >= excess - 1e-9)
            .sorted(Comparator.comparingDouble(Join.Glue::raisedBy).reversed())
            .limit(4)
            .toList();
    for (Join.Glue g : raised) {
      double most = Math.floor((g.raisedBy() - excess) / STEP_MM + 1e-9) * STEP_MM;
      if (most >= 0 && thinEnough(pack, offer, g, most, pile)) {
        String units = pack.inputs().wants().units().fine(most);
        String message =
            problem.message()
                + ": raise "
                + pack.card().piece(g.a().piece()).name()
                + " by "
                + units
                + " or less";
        return Optional.of(
            new Problem(
                problem.kind(),
                problem.level(),
                g.a().piece(),
                g.origin(),
                null,
                message,
                problem.numbers(),
                List.of(Want.atMost(g.origin() + ".raised-by", most))));
      }
    }
    return Optional.empty();
  }

  private static boolean thinEnough(
      Pack pack, Postage.Offer offer, Join.Glue lowered, double to, double pile) {
    Rest rest = pack.flats().states().get(offer.rest());
    Card changed = with(pack.card(), lowered, to);
    Flats flats = FlatStates.of(FoldForward.of(changed), pack.flats().states().size());
    return flats.states().stream()
        .anyMatch(r -> r.leans().equals(rest.leans()) && r.rigid() <= pile + 1e-6);
  }

  private static Card with(Card card, Join.Glue lowered, double to) {
    List<Join> joins = new ArrayList<>();
    for (Join j : card.joins()) {
      joins.add(
          j.id().equals(lowered.id())
              ? new Join.Glue(
                  lowered.id(), lowered.a(), lowered.b(), to, lowered.glue(), lowered.origin())
              : j);
    }
    return new Card(card.title(), card.roots(), card.pieces(), joins, card.stays());
  }

  private static List<Join.Glue> glues(Card card) {
    List<Join.Glue> glues = new ArrayList<>();
    for (Join j : card.joins()) {
      if (j instanceof Join.Glue g) {
        glues.add(g);
      }
    }
    return glues;
  }
}
