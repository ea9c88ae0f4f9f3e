package wherefrom;

/** The only place that wires. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.exit(args.length);
  }
}
