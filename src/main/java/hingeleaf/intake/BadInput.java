package hingeleaf.intake;

import hingeleaf.finding.Place;
import hingeleaf.finding.Problem;

/** What a text says cannot be used; carries one located sentence. */
@SuppressWarnings("serial")
public final class BadInput extends Exception {
  private final transient Problem problem;

  BadInput(Place place, String message) {
    super(place + ": " + message);
    problem = Problem.blocks("bad-input", "", "", message).at(place);
  }

  public Problem problem() {
    return problem;
  }
}
