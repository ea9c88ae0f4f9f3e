package wherefrom.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.entry.JobOpened;
import wherefrom.logbook.Written;
import wherefrom.parts.PartKind;
import wherefrom.parts.TagCode;
import wherefrom.quantity.UnitSystem;

/**
 * A written session of calls, run in two like folders: in one for text, in the other for JSON.
 *
 * <p>{@code $} begins a call, {@code $~} one of whose output only the beginning counts, {@code <} a
 * line of its standard input, {@code %} something done beside the calls, {@code #} a remark. What
 * came is written under the call: {@code |} a line of output, {@code !} of errors, {@code =} the
 * exit status, {@code @} a line of output as JSON, {@code @!} and {@code @=} what else differs
 * there.
 */
final class Session {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern CODE = Pattern.compile("\\{(tag|card|typed) ([^}]*)}");
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);

  private static final int SHOWN = 120;

  private final Shop text;
  private final Shop json;

  Session(Path folder) throws IOException {
    this.text = new Shop(Files.createDirectory(folder.resolve("text")));
    this.json = new Shop(Files.createDirectory(folder.resolve("json")));
  }

  /** The lines that ask for something. */
  static String calls(String session) {
    return String.join("\n", session.lines().filter(line -> line.matches("([$#<%].*|)")).toList());
  }

  /** The same session with what is said now. */
  String run(String session) throws IOException {
    List<String> said = new ArrayList<>();
    List<String> lines = calls(session).lines().filter(line -> !line.isEmpty()).toList();
    for (int at = 0; at < lines.size(); at++) {
      String line = lines.get(at);
      StringBuilder input = new StringBuilder();
      if (line.charAt(0) != '<') {
        said.addAll(List.of("", line));
      }
      while (at + 1 < lines.size() && lines.get(at + 1).startsWith("<")) {
        said.add(lines.get(++at));
        input.append(lines.get(at).substring(1).strip()).append('\n');
      }
      if (line.charAt(0) == '$') {
        said.addAll(call(line, input.toString()));
      } else if (line.charAt(0) == '%') {
        make(text, words(text, line));
        make(json, words(json, line));
      }
    }
    return String.join("\n", said).strip() + "\n";
  }

  private List<String> call(String line, String input) {
    boolean first = line.startsWith("$~");
    Shop.Outcome plain = text.runWith(codes(text, line, input), words(text, line));
    List<String> asked = new ArrayList<>(List.of(words(json, line)));
    asked.add(Math.max(asked.indexOf("--"), 0) == 0 ? asked.size() : asked.indexOf("--"), "--json");
    Shop.Outcome data = json.runWith(codes(json, line, input), asked.toArray(String[]::new));
    List<String> said = new ArrayList<>();
    said.addAll(marked("| ", out(text, plain.out(), first)));
    said.addAll(marked("! ", out(text, plain.err(), false)));
    said.add("= " + plain.status());
    said.addAll(marked("@ ", out(json, data.out(), first)));
    if (!out(json, data.err(), false).equals(out(text, plain.err(), false))) {
      said.addAll(marked("@! ", out(json, data.err(), false)));
    }
    if (data.status() != plain.status()) {
      said.add("@= " + data.status());
    }
    return said;
  }

  private static String out(Shop shop, String said, boolean first) {
    String clean = said.replace(shop.folder.toString(), "FOLDER");
    String line = clean.lines().findFirst().orElse("");
    return first ? line.substring(0, Math.min(line.length(), SHOWN)) : clean;
  }

  private static List<String> marked(String mark, String said) {
    return said.lines().map(line -> (mark + line).stripTrailing()).toList();
  }

  private static String[] words(Shop shop, String line) {
    String rest = line.replaceFirst("^[$%]~?\\s*", "");
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(rest);
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    return words.stream()
        .map(each -> codes(shop, line, each.replace("FOLDER", shop.folder.toString())))
        .toArray(String[]::new);
  }

  private static String codes(Shop shop, String line, String words) {
    Matcher job = Pattern.compile("--job (\\S+)").matcher(line);
    UnaryOperator<String> folder = name -> name.replace("FOLDER", shop.folder.toString());
    return job.find() && words.contains("{")
        ? CODE.matcher(all(shop, folder.apply(job.group(1)), words))
            .replaceAll(code -> code(shop, folder.apply(job.group(1)), code))
        : words;
  }

  /** Every part's tag, and every tag with its place's card. */
  private static String all(Shop shop, String job, String words) {
    List<String[]> rows =
        words.contains("s}") ? shop.right("places", "--job", job).rows() : List.of();
    String tags = rows.stream().map(row -> row[1]).collect(Collectors.joining("\n"));
    String pairs =
        rows.stream().map(row -> row[1] + " " + row[0]).collect(Collectors.joining("\n"));
    return words.replace("{tags}", tags).replace("{pairs}", pairs);
  }

  private static String code(Shop shop, String job, MatchResult code) {
    Shop.Codes codes = shop.codes(job, code.group(2));
    return switch (code.group(1)) {
      case "tag" -> codes.tag();
      case "card" -> codes.card();
      default -> TagCode.find(codes.tag()).orElseThrow().typed().replace(" ", "");
    };
  }

  private static void make(Shop shop, String[] words) throws IOException {
    Path file = Path.of(words[1]);
    switch (words[0]) {
      case "file" -> Files.writeString(file, words[2].replace("\\n", "\n"));
      case "picture" -> picture(file, Path.of(words[2]));
      case "engine" ->
          Written.job(
              file,
              CLOCK,
              JobOpened.of(
                  file.getFileName().toString(),
                  Integer.parseInt(words[2]),
                  ReadyLayouts.find("inline-4").orElseThrow(),
                  EnumSet.copyOf(PartKind.alwaysOn()),
                  UnitSystem.INCH));
      default -> throw new IllegalArgumentException(words[0]);
    }
  }

  /** The first page of a sheet, as a photograph of it would be. */
  private static void picture(Path pdf, Path png) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 203, ImageType.GRAY);
      ImageIO.write(image, "png", png.toFile());
    }
  }
}
