package hingeleaf.cli;

/** The door from the shell. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.out.println("hingeleaf");
  }
}
