package wherefrom.ui.settings;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import wherefrom.job.By;
import wherefrom.job.settings.ServerAddress;
import wherefrom.job.settings.Settings;
import wherefrom.job.settings.Workplace;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.files.FilesScreen;

/** Asks where the jobs lie, which bench this machine is, and who works at it. */
final class WorkplaceAsking {
  private static final String WHERE = "Where the jobs lie";
  private static final String USUAL = "postgresql://wherefrom@bench-pc/shop";
  private static final int OFFERED = 9;

  private final ScreenContext context;
  private final Consumer<Settings> change;

  /**
   * @param change takes the settings as they are to be
   */
  WorkplaceAsking(ScreenContext context, Consumer<Settings> change) {
    this.context = context;
    this.change = change;
  }

  void where() {
    Runnable folder = this::folder;
    Runnable server = this::server;
    List<Choice<Runnable>> choices =
        List.of(
            new Choice<>(folder, "In a folder", "on this computer, for one bench")
                .now(now().server().isEmpty()),
            new Choice<>(server, "On a shared server", "for several benches at once")
                .now(now().server().isPresent()));
    ask(WHERE, choices, Runnable::run);
  }

  private <T> void ask(String title, List<Choice<T>> choices, Consumer<T> done) {
    context.navigator().open(() -> new ChoiceScreen<>(context, title, choices, done));
  }

  private void write(String title, String initial, Consumer<String> done) {
    context.navigator().open(() -> new TextEntryScreen(context, title, initial, done));
  }

  private Workplace now() {
    return context.settings().workplace();
  }

  private void folder() {
    Path shop = context.settings().shop();
    context.navigator().open(() -> FilesScreen.folder(context, "Jobs folder", shop, this::folder));
  }

  private void folder(Path folder) {
    boolean moved = now().server().isPresent();
    Settings settings = context.settings().withShop(folder);
    change.accept(settings.withWorkplace(now().on(Optional.empty())));
    if (moved) {
      sayWhen();
    }
  }

  private void server() {
    ServerAddress before = now().server().orElseGet(() -> ServerAddress.read(USUAL));
    write(
        "The server's computer",
        now().server().isEmpty() ? "" : before.host(),
        host -> host(before, host));
  }

  /** Asked for piece by piece: the keys on the glass have no letters for an address. */
  private void host(ServerAddress before, String host) {
    if (ServerAddress.isMeant(host)) {
      context.attempt(() -> server(host));
      return;
    }
    write(
        "Its database",
        before.database(),
        database ->
            write(
                "Your name there",
                before.user(),
                user ->
                    context.attempt(
                        () ->
                            server(
                                new ServerAddress(named(host), before.port(), database, user)))));
  }

  /** The keys begin with a capital, which a computer's name has no use for. */
  private static String named(String host) {
    return host.strip().toLowerCase(Locale.ROOT);
  }

  private void server(ServerAddress typed) {
    server(typed.text());
  }

  private void server(String text) {
    keep(now().on(Optional.of(ServerAddress.read(text))));
  }

  void bench() {
    List<Choice<Integer>> benches =
        IntStream.rangeClosed(1, OFFERED)
            .mapToObj(number -> new Choice<>(number, "Bench " + number, ""))
            .toList();
    ask("Which bench is this?", Choice.now(benches, now().by().bench()), this::who);
  }

  private void who(int bench) {
    write(
        "Your name, or nothing",
        now().by().who(),
        name -> context.attempt(() -> keep(now().by(new By(bench, name)))));
  }

  private void keep(Workplace place) {
    change.accept(context.settings().withWorkplace(place));
    sayWhen();
  }

  private void sayWhen() {
    context.say("Start Wherefrom again to use it.");
  }
}
