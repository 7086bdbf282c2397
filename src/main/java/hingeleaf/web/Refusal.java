package hingeleaf.web;

import hingeleaf.finding.Problem;
import java.util.List;

/** Ends a request with a status and a sentence for the maker, in the words of the command line. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final int status;
  private final transient List<Problem> problems;

  Refusal(int status, String message) {
    this(status, message, List.of());
  }

  Refusal(int status, String message, List<Problem> problems) {
    super(message, null, false, false);
    this.status = status;
    this.problems = problems;
  }

  int status() {
    return status;
  }

  List<Problem> problems() {
    return problems;
  }
}
