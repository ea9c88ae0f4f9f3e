package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.LoggedEntry;

/** Every command of the program: what it does is one entry in the logbook, or none. */
class OneEntryTest {
  /** The commands that write several, each with its reason. */
  private static final Map<String, String> SEVERAL =
      Map.of("tray out", "each part on the tray is a step of its own, taken back by itself");

  private static final String STOCK = "a4-3x8-63.5x33.9";

  @TempDir Path folder;
  private Shop shop;
  private String job;
  private String tag3;
  private String card3;
  private String tag5;
  private final TreeSet<String> called = new TreeSet<>();

  @BeforeEach
  void begin() {
    shop = shop(folder);
  }

  /** The shop that all of it is done in. */
  Shop shop(Path in) {
    return new Shop(in);
  }

  /** Where the job is brought that was exported. */
  Shop elsewhere() {
    return shop;
  }

  private long entries() {
    long[] count = new long[1];
    shop.change(
        job,
        open ->
            count[0] =
                open.history().stream()
                    .filter(logged -> logged.by().bench() == 1)
                    .map(LoggedEntry::sequence)
                    .distinct()
                    .count());
    return count[0];
  }

  /** A call that must go well and write so many entries. */
  private Shop.Outcome call(int wanted, String name, String... words) {
    return call(wanted, 0, name, words);
  }

  private Shop.Outcome call(int wanted, int status, String name, String... words) {
    long before = entries();
    List<String> all = new ArrayList<>(List.of(name.split(" ")));
    all.addAll(List.of("--job", job));
    all.addAll(List.of(words));
    Shop.Outcome outcome = shop.run(all.toArray(String[]::new));
    assertThat(outcome.status()).as(all + " gave " + outcome).isEqualTo(status);
    assertThat(entries() - before).as("entries of " + all).isEqualTo(wanted);
    assertThat(wanted > 1).as(name).isEqualTo(SEVERAL.containsKey(name) && wanted != 0);
    called.add(name);
    return outcome;
  }

  /** A call that knows no job, or only names one. */
  private void apart(String name, String... words) {
    List<String> all = new ArrayList<>(List.of(name.split(" ")));
    all.addAll(List.of(words));
    shop.right(all.toArray(String[]::new));
    called.add(name);
  }

  @Test
  void everyCommandWritesOneEntryForOneAct() throws IOException {
    begun();
    takenApart();
    betweenTheDays();
    money();
    looked();
    ringsAndWeights();
    bagsAndBigParts();
    planned();
    putTogether();
    torqueAndTiming();
    put();
    List<String> names = Commands.all().stream().map(Command::name).toList();
    assertThat(names).hasSizeGreaterThan(70).doesNotHaveDuplicates();
    assertThat(called).containsAll(names);
  }

  private void begun() {
    apart("layouts");
    apart("stocks");
    apart("demo", "--folder", shop.path("demo"));
    apart("completion");
    apart("man");
    job = shop.path("engine");
    apart("job new", "--folder", job, "--layout", "v8-odd-even", "--name", "engine");
    assertThat(entries()).isEqualTo(1);
    call(1, "job track", "--kinds", "valve,spring");
    apart("job list", "--folder", folder.toString());
    call(0, "resume");
    call(0, "places");
    tag3 = shop.codes(job, "cylinder 3, exhaust, pushrod").tag();
    card3 = shop.codes(job, "cylinder 3, exhaust, pushrod").card();
    tag5 = shop.codes(job, "cylinder 5, exhaust, pushrod").tag();
    call(1, "tags", "--stock", STOCK, "--out", shop.path("t.pdf"), "--only", "pushrod", "lifter");
  }

  private void takenApart() throws IOException {
    String pdf = shop.path("lifters.pdf");
    shop.right("tags", "--job", job, "--stock", STOCK, "--out", pdf, "--only", "lifter");
    Path png = folder.resolve("tray.png");
    try (PDDocument document = Loader.loadPDF(Path.of(pdf).toFile())) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 203, ImageType.GRAY);
      ImageIO.write(image, "png", png.toFile());
    }
    call(0, "read", png.toString());
    call(16, "tray out", png.toString());
    call(0, "tray check", png.toString());
    call(1, "out", tag3);
    call(1, "out", tag5);
    call(0, "out", tag5);
    call(1, 1, "out", "9999999999999999");
    call(0, "where", tag3);
  }

  private void betweenTheDays() {
    call(1, "wash", "--basket", "2", tag3);
    call(1, "back", tag3);
    shop.right("wash", "--job", job, "--basket", "2", tag3, tag5);
    call(0, "wash list");
    call(1, "wash count", "--basket", "2", "--pieces", "2", "--tags", "on");
    call(1, "lost", tag3);
    call(1, "found", tag3);
    call(1, "note", "--text", "polished tip", tag3);
    call(1, "reprint", "--reason", "tag torn", tag5);
    tag5 = shop.codes(job, "cylinder 5, exhaust, pushrod").tag();
    call(0, 1, "undo");
    call(0, "shop new");
    call(1, "shop send", "--visit", "1", "--wanted", "measure runout", tag3);
    call(
        1,
        "shop add",
        "--visit",
        "1",
        "--what",
        "block",
        "--count",
        "1",
        "--wanted",
        "bore all",
        "--size",
        "3.8900",
        "--within",
        "0.0005");
    call(0, "shop list");
    call(0, "shop slip", "--visit", "1", "--out", shop.path("slip.pdf"));
    call(1, "shop back", tag3);
    call(1, "shop count", "--visit", "1", "--line", "1", "--pieces", "1", "--size", "3.8903");
    call(
        1,
        "tool add",
        "--name",
        "caliper",
        "--step",
        "0.0005in",
        "--error",
        "0.001in",
        "--repeat",
        "0.0005in");
    call(1, "measure", tag3, "--plan", "pushrod-length", "--tool", "caliper", "7.9000in");
    shop.right("wash", "--job", job, "--basket", "3", tag3);
    String[] by = {"--kind", "pushrod", "--with", "pushrod-length=caliper", "A=7.9000in"};
    call(0, "retag propose", by);
    List<String> accept = new ArrayList<>(List.of(by));
    accept.addAll(0, List.of("--mark", "A", "--as", "" + item(tag3)));
    call(1, "retag accept", accept.toArray(String[]::new));
    tag3 = shop.codes(job, "cylinder 3, exhaust, pushrod").tag();
    call(
        1,
        "replace",
        "--reason",
        "worn out",
        shop.codes(job, "cylinder 7, exhaust, pushrod").tag());
    call(1, "undo");
  }

  private static int item(String tag) {
    return Integer.parseInt(tag.substring(8, 12));
  }

  private void money() throws IOException {
    call(1, "money note", "--what", "boring", "--state", "quoted", "--amount", "240");
    call(1, "money move", "--line", "1", "--state", "paid");
    call(1, "money price", "--what", "lifters", "--amount", "12.50");
    call(1, "money budget", "--amount", "1500", "--currency", "EUR");
    call(0, "money list");
    call(1, "buy offer", "--supplier", "Northside", "--what", "lifters", "--amount", "80");
    call(0, "buy list");
    call(0, "buy compare");
    call(0, "money effect", "--change", "new-flat-cam");
    String table = shop.path("costs.csv");
    call(0, "money export", "--out", table);
    Files.writeString(
        Path.of(table), "what,about,state,amount,note\nrings,,paid,38,\ngaskets,,paid,61,\n");
    call(1, "money import", table);
    call(1, "money drop", "--line", "1", "--reason", "noted twice");
    call(0, "record", "--out", shop.path("record.pdf"), "--csv", shop.path("record.csv"));
  }

  private void looked() throws IOException {
    call(1, "inspect", tag3, "--check", "pushrod-roll", "--answer", "pass");
    call(1, "inspect", "lobe@3EX", "--check", "lobe-look", "--answer", "pass");
    Path photo = folder.resolve("photo.png");
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
    call(1, "photo", tag3, photo.toString());
    Path pictures = Files.createDirectory(folder.resolve("pictures"));
    ImageIO.write(
        new BufferedImage(30, 40, BufferedImage.TYPE_INT_RGB),
        "png",
        pictures.resolve("one.png").toFile());
    call(1, "photos", pictures.toString(), "--engine");
    call(0, "tool list");
    call(1, "tool zero", "--name", "caliper", "--shows", "0in");
    call(0, "limit list");
    call(
        1,
        "limit set",
        "--plan",
        "pushrod-runout",
        "--result",
        "value",
        "--upper",
        "0.002in",
        "--source",
        "manual, p. 12");
    call(1, "limit size", "--plan", "main-journal", "--size", "2.6110in", "--source", "p. 3");
    call(0, "compare", "--plan", "pushrod-length");
    call(0, "clearance");
    call(0, "sizes");
  }

  private void ringsAndWeights() {
    call(0, "ring list");
    call(1, "ring want", "--ring", "top", "--gap", "0.014in", "--source", "sheet");
    String[] reading = {"--plan", "ring-gap", "--tool", "caliper", "0.0150in", "0.0160in"};
    List<String> rings = new ArrayList<>(List.of("rings@B1"));
    rings.addAll(List.of(reading));
    call(1, "measure", rings.toArray(String[]::new));
    call(1, "ring tick", "--cylinder", "1", "--ring", "top");
    call(1, "weight set", "--what", "shells", "--figure", "45g");
    call(0, "before list");
    call(0, "before signs");
    call(0, "casting list");
    call(0, "start list");
    call(1, "start tick", "--point", "oil", "--words", "30, zinc additive");
    runInAndService();
    call(1, "casting decide", "--of", "block@", "--as", "reuse");
    call(0, "weight list");
    call(0, "weight bob");
  }

  private void runInAndService() {
    call(0, 1, "run begin");
    call(1, "run begin", "--anyway", "parts lie on the bench");
    call(1, "run note", "--oil", "45psi", "--coolant", "180F");
    call(1, "run stop", "--why", "noise", "--words", "a tick");
    call(1, "run on", "--words", "lash set");
    call(1, "run stop", "--why", "other", "--minutes", "0");
    call(0, "run show");
    call(1, "service tick", "--point", "oil", "--words", "clean");
    call(1, "service due", "--point", "oil-again", "--after", "300mi", "--source", "sheet");
    call(1, "service run", "--run", "2.5h");
    call(1, "service begin", "--words", "in the truck");
    call(0, "service list");
    call(1, "service end", "--reason", "it smokes");
    call(1, "service begin");
    call(1, "service apart", "--reason", "it smokes");
    call(1, "undo");
    call(1, "undo");
  }

  private void bagsAndBigParts() {
    call(1, "big add");
    call(0, "big list");
    call(1, "big off", "12");
    call(0, 1, "big off", "14");
    call(1, "big wash", "12");
    call(1, "big back", "12");
    call(1, "big shop", "12");
    call(1, "big lost", "12");
    shop.right("big", "back", "--job", job, "12");
    call(1, "big mark", "--text", "cast 1234", "12");
    call(1, "big decide", "--as", "reuse", "12");
    call(1, "big on", "12");
    call(0, "big gaskets");
    call(1, "big buy");
    call(1, "buy set", "--what", "water pump gasket", "--holds", "1");
    call(0, "buy set");
    call(1, "bag fill", "--what", "bolts", "--count", "4", "1");
    call(0, "bag list");
    call(0, 1, "bag used", "--count", "3", "1");
    call(1, "bag used", "--count", "4", "1");
    call(1, "bag back", "1");
    call(1, "bag wash", "1");
    call(1, "bag lost", "1");
    shop.right("bag", "back", "--job", job, "1");
    call(1, "bag shop", "1");
  }

  private void planned() {
    call(1, "plan change", "head-milled", "--where", "left", "--size", "0.010 in");
    call(0, "plan list");
    call(1, "plan made", "1");
    call(1, "plan change", "new-flat-cam");
    call(1, "plan drop", "2");
    List<String> checks = call(0, "plan checks").lines();
    assertThat(checks).isNotEmpty();
    call(1, "plan answer", checks.get(0).split("\t")[0], "--answer", "pass");
    call(1, "debris found", "pan", "plastic");
    call(1, "debris opened", "pan-and-pickup", "--answer", "pass");
    call(0, 1, "debris map");
    call(0, "decide list");
    call(1, "decide ask", "every");
    call(1, "decide ask", "suspect");
    call(0, "decide propose", tag3);
    call(1, "decide", "--as", "reuse", "--reason", "good", tag3);
    call(1, "decide set", "lifter", "--as", "reuse", "--reason", "good");
    call(0, "decide buy");
    call(1, "decide set", "lifter", "--as", "replace", "--reason", "worn");
    call(1, "buy number", "--what", "lifters", "--number", "LF 16");
    call(1, "buy arrived", "--number", "lf-16", "--pieces", "15", "--right", "yes");
    String[] gauged = {"--by", "diameter", "--reading", "0.842in", "--standard", "0.842in"};
    String[] came = {"--what", "lifters", "--pieces", "1", "--tolerance", "0.003in"};
    call(1, "buy arrived", Stream.of(came, gauged).flatMap(Arrays::stream).toArray(String[]::new));
    call(1, "decide set", "lifter", "--as", "reuse", "--reason", "good");
  }

  private void putTogether() {
    String card5 = shop.codes(job, "cylinder 5, exhaust, pushrod").card();
    call(1, 1, "fit", tag3, card5);
    call(1, "undo");
    call(1, "fit", tag3, card5, "--on-purpose", "no other left");
    call(1, "fit", tag5, card5, "--on-purpose", "no other left");
    call(1, "undo");
    call(0, "swaps");
    call(1, "took-out", tag3);
    call(1, "fit", tag3, card3, "--on-purpose", "no other left");
    call(0, "to-fit");
    call(0, "paper bench", "--out", shop.path("bench.pdf"));
    call(0, "paper rack", "--out", shop.path("rack.pdf"));
    call(0, "paper to-fit", "--out", shop.path("fit.pdf"));
    String home = shop.codes(job, "cylinder 5, exhaust, pushrod").tag();
    call(1, "leave-empty", "--reason", "not needed", home);
  }

  private void torqueAndTiming() {
    call(
        1,
        "torque new",
        "--fastener",
        "head bolts",
        "--rows",
        "2",
        "--columns",
        "5",
        "--threads",
        "oiled",
        "--stage",
        "20Nm",
        "40Nm",
        "--source",
        "manual, p. 12");
    call(0, "torque list");
    call(0, "torque show", "--card", "1");
    call(1, "torque tick", "--card", "1", "--bolt", "1", "--person", "A. B.");
    call(0, 1, "torque tick", "--card", "1", "--bolt", "7", "--person", "A. B.");
    call(1, "torque undo", "--card", "1");
    call(1, "torque drop", "--card", "1", "--reason", "loosened");
    call(1, "timing chain", "inward=-0.20in", "outward=0.15in");
    call(1, "timing slack", "forward=8deg", "backward=5deg");
    call(
        1,
        "timing set",
        "--checking-lift",
        "0.050in",
        "--wheel",
        "0.5deg",
        "--dial",
        "0.0005in",
        "--zero",
        "0.5deg");
    call(1, "timing read", "--lobe", "1IN", "10=0.05in", "20=0.08in", "30=0.11in");
    call(0, "timing list", "--lobe", "1IN");
    call(1, "timing remove", "--lobe", "1IN", "--at", "20");
    call(1, "timing card", "--source", "cam card", "intake-center=106", "advance=2");
    call(0, 1, "timing show", "--cylinder", "1");
  }

  private void put() {
    String small = shop.path("small");
    shop.right("job", "new", "--folder", small, "--layout", "inline-4", "--name", "small");
    String before = job;
    job = small;
    call(1, "finish", "mains");
    job = before;
    call(0, "check");
    call(0, "backup", "--to", shop.path("stick"));
    call(0, "export", "--out", shop.path("engine.zip"));
    elsewhere().right("import", shop.path("engine.zip"), "--folder", shop.path("other"));
    called.add("import");
    apart("workings");
    call(0, "report", "--out", shop.path("report.txt"));
    apart("plan numbers", "--now", "bore=3.87in", "stroke=3.31in", "--idea", "bore=3.90in");
  }

  /** A call that is refused half-way keeps nothing of its first half. */
  @Test
  void aCallThatIsRefusedHalfWayWritesNothing() {
    job = shop.begin("engine");
    call(0, 2, "timing read", "--lobe", "1IN", "10=0.05in", "20=wrong");
    call(0, 2, "timing set", "--wheel", "0.5deg", "--dial", "-1in");
    call(0, 2, "timing chain", "inward=0.1in", "outside=0.2in");
    call(0, 2, "timing card", "--source", "card", "intake-center=106", "no-value=1");
    call(0, 2, "money note", "--what", "boring", "--state", "quoted", "--amount", "many");
  }
}
