package hingeleaf.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command: one short class for each verb, one place where faults become words and codes. */
@Command(
    name = "hingeleaf",
    mixinStandardHelpOptions = true,
    version = "hingeleaf 0.1.0",
    description = "From a small design to everything a maker of dimensional cards needs.",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      NewCommand.class,
      CheckCommand.class,
      MakeCommand.class,
      LookCommand.class,
      PostCommand.class,
      PriceCommand.class,
      RescueCommand.class,
      SchemaCommand.class,
      ServeCommand.class,
      BaselineCommand.class,
      FiguresCommand.class
    },
    footerHeading = "%nExit codes: ",
    footer = {
      "0 fine, 1 the content of a file blocks, 2 the command line is wrong,",
      "3 cannot read or write, 70 our bug, 130 stopped.",
      "",
      "Start with: hingeleaf new stacked-frames > card.yaml",
      "            hingeleaf make card.yaml --out pack"
    })
public final class Main implements Runnable {
  @Spec private CommandSpec spec;

  private Main(CommandSpec none) {
    this.spec = none;
  }

  /** For the command-line library alone. */
  public Main() {
    this(CommandSpec.create());
  }

  /** Runs the tool in this process and ends it. */
  public static void main(String[] args) {
    // Libraries talk of their own affairs; a maker should not have to read it.
    System.setProperty("org.apache.commons.logging.Log", "org.apache.commons.logging.impl.NoOpLog");
    // Pages pack a tenth less tightly and are written in half the time.
    System.setProperty("org.apache.pdfbox.filter.deflatelevel", "3");
    PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    int code = run(List.of(args), out, err);
    out.flush();
    System.exit(code);
  }

  /** Runs the tool on these arguments; returns the exit code. Tests run it so. */
  public static int run(List<String> args, PrintStream out, PrintStream err) {
    Optional<Ahead> ahead = Ahead.of(args);
    CommandLine line = new CommandLine(new Main());
    Terminal terminal = new Terminal(out, err);
    line.addSubcommand(new FoldCommand(terminal));
    line.addSubcommand(new SheetsCommand(out, err));
    line.addSubcommand(new SheetsBenchmarkCommand(out, err));
    line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
    line.setParameterExceptionHandler(Main::usage);
    line.setExecutionExceptionHandler(
        (e, command, parsed) -> {
          command.getErr().flush();
          return fault(e, err);
        });
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionStrategy(
        parsed -> {
          parsed.asCommandLineList().forEach(c -> begun(c.getCommandSpec(), ahead));
          return new CommandLine.RunLast().execute(parsed);
        });
    int code = line.execute(args.toArray(String[]::new));
    line.getOut().flush();
    return code;
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static void begun(CommandSpec command, Optional<Ahead> ahead) {
    for (CommandSpec mixin : command.mixins().values()) {
      if (mixin.userObject() instanceof Common common) {
        common.begun(ahead);
      }
    }
  }

  private static int usage(ParameterException e, String[] args) {
    PrintWriter err = e.getCommandLine().getErr();
    err.println("hingeleaf: " + e.getMessage());
    UnmatchedArgumentException.printSuggestions(e, err);
    err.println("Try: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
    err.flush();
    return Exit.USAGE;
  }

  private static int fault(Exception e, PrintStream err) {
    if (e instanceof DoorException d) {
      err.println("hingeleaf: " + d.getMessage());
      return d.exit();
    }
    err.println("hingeleaf: this is our bug, please report it with the files that led to it:");
    e.printStackTrace(err);
    return Exit.BUG;
  }
}
