package hingeleaf.fold.stand;

import hingeleaf.card.MadeCard;
import hingeleaf.fold.Budget;
import hingeleaf.fold.FoldForward;
import hingeleaf.fold.Linkage;
import hingeleaf.fold.Stays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a card's stays hold, by the singular values of the closed loops at the made pose. Doors,
 * which open and shut whatever stands, are left out of all counts.
 *
 * @param set freedoms with the stays set; 0 where they hold
 * @param released freedoms with the stays let go, their own folds left out
 * @param without freedoms of the same card made without the stays: what {@code released} must be
 * @param folds the stays' own folds
 * @param firm whether, set, nothing moves even to first order; where it does but {@code set} is 0
 *     the layers between are only held taut, and give by the root of the play
 * @param moving indices of the joints that can still move with the stays set
 */
public record Hold(
    int set, int released, int without, int folds, boolean firm, Set<Integer> moving) {
  private static final long STEPS = 4_000_000;

  public Hold {
    moving = Set.copyOf(moving);
  }

  /** A card without stays is told as it is. */
  public static Hold of(MadeCard made) {
    Stays stays = Stays.of(made);
    Linkage released = Linkage.of(made.mechanism(), Budget.of(STEPS));
    Linkage set = Linkage.of(stays.set(), Budget.of(STEPS));
    List<Integer> doors = released.loopless().stream().filter(j -> !stays.folds(j)).toList();
    Set<Integer> moving = new TreeSet<>(set.moving(Budget.of(STEPS)));
    moving.removeAll(doors);
    double[] still = new double[made.mechanism().joints().size()];
    int free = released.mobility(Budget.of(STEPS)) - stays.folds() - doors.size();
    return new Hold(
        set.mobility(Budget.of(STEPS)) - doors.size(),
        free,
        made.card().stays().isEmpty() ? free : bare(made) - doors.size(),
        stays.folds(),
        set.freedomsAt(set.at(still)) == doors.size(),
        moving);
  }

  /** Freedoms of the card whose stays were never made. */
  private static int bare(MadeCard made) {
    Linkage bare =
        Linkage.of(FoldForward.of(made.card().withoutStays()).mechanism(), Budget.of(STEPS));
    return bare.mobility(Budget.of(STEPS));
  }

  /** Whether the stays, let go, leave the card every freedom that it has without them. */
  public boolean frees() {
    return released == without;
  }

  /** Whether nothing can lean while the stays are set. */
  public boolean holds() {
    return set == 0;
  }
}
