package wherefrom.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.files.Incoming;
import wherefrom.text.Words;

/** The ready stocks, and the user's own from a file. */
final class StockShelf {
  private static final String FOLDER = "/wherefrom/labels";
  private static final int MOST_BYTES = 1_000_000;
  private final List<LabelStock> ready;

  private StockShelf(List<LabelStock> ready) {
    this.ready = List.copyOf(ready);
  }

  /** The stocks that come with the product. */
  static StockShelf ofReady() {
    try {
      return ofFolder(folder());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Within the program's own runtime no resource is a folder: there the module's files are. */
  private static URI folder() throws URISyntaxException {
    Module ours = StockShelf.class.getModule();
    if (ours.isNamed()) {
      return URI.create("jrt:/" + ours.getName() + FOLDER);
    }
    URL folder = StockShelf.class.getResource(FOLDER);
    if (folder == null) {
      throw new IllegalStateException("the ready label stocks are missing: " + FOLDER);
    }
    return folder.toURI();
  }

  private static StockShelf ofFolder(URI folder) throws IOException {
    if (!"jar".equals(folder.getScheme())) {
      return ofFolder(Path.of(folder));
    }
    // As it is spelled: a space in the name of a folder stands as %20 in it.
    String spelled = folder.toString();
    URI jar = URI.create(spelled.substring("jar:".length(), spelled.lastIndexOf("!/")));
    try (FileSystem inside = FileSystems.newFileSystem(Path.of(jar), Map.of())) {
      return ofFolder(inside.getPath(FOLDER));
    }
  }

  private static StockShelf ofFolder(Path folder) throws IOException {
    List<LabelStock> stocks = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        StockReading reading = StockReader.read(Files.readString(file, StandardCharsets.UTF_8));
        if (reading instanceof StockReading.Good good) {
          stocks.add(good.stock());
        } else {
          throw new IllegalStateException(file + ": " + reading);
        }
      }
    }
    stocks.sort(Comparator.comparing(LabelStock::name));
    return new StockShelf(stocks);
  }

  List<LabelStock> listStocks() {
    return ready;
  }

  /** A ready stock by name, or the user's own from its file. */
  StockReading find(String nameOrFile) {
    Optional<LabelStock> named =
        ready.stream().filter(stock -> stock.name().equals(nameOrFile)).findFirst();
    if (named.isPresent()) {
      return new StockReading.Good(named.get());
    }
    if (!nameOrFile.endsWith(".json")) {
      return bad(
          "There is no label stock named \""
              + nameOrFile
              + "\". Use one from the list, or the path of your own stock file (.json).");
    }
    return fromFile(nameOrFile);
  }

  private static StockReading fromFile(String file) {
    try {
      byte[] bytes = Incoming.read(Path.of(file), MOST_BYTES);
      ByteBuffer text = ByteBuffer.wrap(bytes);
      return StockReader.read(StandardCharsets.UTF_8.newDecoder().decode(text).toString());
    } catch (NoSuchFileException e) {
      return bad("The stock file " + file + " is not there. Check the path.");
    } catch (IOException | IllegalArgumentException e) {
      return bad("The stock file " + file + " cannot be read: " + ended(e));
    }
  }

  private static String ended(Exception e) {
    return Words.withStop(String.valueOf(e.getMessage()));
  }

  private static StockReading bad(String sentence) {
    return new StockReading.Bad(List.of(new StockFault("stock", sentence)));
  }
}
