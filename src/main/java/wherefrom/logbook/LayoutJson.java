package wherefrom.logbook;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.LayoutCheck;
import wherefrom.engine.LayoutFault;
import wherefrom.engine.LifterType;
import wherefrom.engine.RockerMount;
import wherefrom.files.Incoming;
import wherefrom.files.Outgoing;
import wherefrom.job.ports.LayoutFiles;

/** Layouts as JSON files, with the fields of {@link Layout} by their names. */
public final class LayoutJson implements LayoutFiles {
  /** A layout file is a page of text at most; more is something else. */
  private static final int MOST_BYTES = 1_000_000;

  @Override
  public Layout read(Path file) throws IOException {
    try {
      return sound(parsed(bytes(file)));
    } catch (IOException e) {
      throw new IOException("Layout file " + file.getFileName() + ": " + e.getMessage(), e);
    } catch (IllegalArgumentException e) {
      // What is out of every range is found out only when it is asked for.
      throw new IOException(
          "Layout file " + file.getFileName() + ": a number in it has far too many digits.", e);
    }
  }

  private static byte[] bytes(Path file) throws IOException {
    try {
      return Incoming.read(file, MOST_BYTES);
    } catch (java.nio.file.FileSystemException e) {
      throw new IOException("it cannot be read (" + DiskErrors.of(e) + ").", e);
    }
  }

  private static JsonNode parsed(byte[] bytes) throws IOException {
    try {
      return JsonFields.MAPPER.readTree(bytes);
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation();
      String where =
          at == null
              ? ""
              : String.format(
                  Locale.ROOT, " at line %d, column %d", at.getLineNr(), at.getColumnNr());
      String what = JsonFields.isTwice(e) ? "a field stands twice" : "this is not JSON";
      throw new IOException(what + where + ". Copy a ready layout and edit it.", e);
    }
  }

  private static Layout sound(JsonNode json) throws IOException {
    Layout layout = layout(new JsonFields("", json));
    List<LayoutFault> faults = LayoutCheck.faults(layout);
    if (!faults.isEmpty()) {
      throw new IOException(
          faults.stream().map(LayoutFault::sentence).collect(Collectors.joining(" ")));
    }
    return layout;
  }

  private static Layout layout(JsonFields fields) throws IOException {
    String name = fields.text("name");
    String title = fields.text("title");
    Arrangement arrangement = choice(fields, "arrangement", Arrangement.values());
    List<Bank> banks = new ArrayList<>();
    for (JsonNode bank : fields.list("banks")) {
      banks.add(bank(new JsonFields("banks[" + banks.size() + "]", bank)));
    }
    Layout layout =
        new Layout(
            name,
            title,
            arrangement,
            fields.has("vee") ? fields.whole("vee") : 0,
            banks,
            fields.text("leadingBank"),
            fields.wholeNumbers("firingOrder"),
            fields.whole("mains"),
            fields.whole("thrustMain"),
            fields.yesOrNo("mainCaps"),
            fields.whole("rodJournals"),
            fields.whole("camBearings"),
            choice(fields, "lifters", LifterType.values()),
            choice(fields, "rockers", RockerMount.values()));
    fields.nothingElse();
    return layout;
  }

  private static Bank bank(JsonFields fields) throws IOException {
    Bank bank =
        new Bank(fields.text("name"), fields.wholeNumbers("cylinders"), fields.text("valves"));
    fields.nothingElse();
    return bank;
  }

  private static <E extends Enum<E>> E choice(JsonFields fields, String field, E[] choices)
      throws IOException {
    return fields.oneOf(field, List.of(choices), DomainModule::key);
  }

  /** The layout in a file; empty when it cannot be used. */
  Optional<Layout> findSound(Path file) {
    try {
      return Optional.of(read(file));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  @Override
  public void write(Layout layout, Outgoing out) throws IOException {
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    byte[] json = EntryCodec.MAPPER.writer(printer).writeValueAsBytes(layout);
    try {
      out.write(stream -> stream.write(json));
    } catch (IOException e) {
      throw new IOException("The layout could not be written: " + DiskErrors.of(e) + ".", e);
    }
  }
}
