package wherefrom.logbook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * A disk that keeps apart what was forced and what was only written, fails and loses power from a
 * seed. At a power cut a file that was not forced loses sectors of what was written since, ends
 * early, and may not be there at all; a file that was removed may be there again.
 */
final class MemoryDisk implements LogDisk {
  private static final int SECTOR = 512;

  /** The power went. */
  static final class PowerCut extends RuntimeException {}

  /** What a file holds, and how much of it is surely on disk. */
  private static final class Content {
    private byte[] bytes = {};
    private int forced;
  }

  private final Random random;
  private Map<Path, Content> live = new TreeMap<>();
  private Map<Path, Content> named = new TreeMap<>();
  private double failing;
  private int operationsLeft = Integer.MAX_VALUE;
  private Runnable watching = () -> {};

  MemoryDisk(Random random) {
    this.random = random;
  }

  /** From now on each operation fails with this probability. */
  void fail(double probability) {
    failing = probability;
  }

  /** The power goes in the middle of the operation after this many. */
  void cutPowerAfter(int operations) {
    operationsLeft = operations;
  }

  /** To be done at each operation, while it is half done. */
  void atEachOperation(Runnable deed) {
    watching = deed;
  }

  /** What would be left if the power went now; this disk goes on. */
  MemoryDisk afterPowerCut(Random chance) {
    Map<Content, Content> copies = new IdentityHashMap<>();
    MemoryDisk left = new MemoryDisk(chance);
    live.forEach((file, content) -> left.live.put(file, copy(content, copies)));
    named.forEach((file, content) -> left.named.put(file, copy(content, copies)));
    left.restart();
    return left;
  }

  private static Content copy(Content content, Map<Content, Content> copies) {
    return copies.computeIfAbsent(
        content,
        each -> {
          Content copy = new Content();
          copy.bytes = each.bytes.clone();
          copy.forced = each.forced;
          return copy;
        });
  }

  private void operation(String what) throws IOException {
    watching.run();
    if (operationsLeft-- <= 0) {
      throw new PowerCut();
    }
    if (random.nextDouble() < failing) {
      throw new IOException(what + " failed");
    }
  }

  /** What is left after the power went; everything works again. */
  void restart() {
    Map<Path, Content> kept = new TreeMap<>();
    named.forEach(
        (file, content) -> {
          if (live.containsKey(file) || random.nextBoolean()) {
            kept.put(file, content);
          }
        });
    live.forEach(
        (file, content) -> {
          if (named.get(file) == content || random.nextBoolean()) {
            kept.put(file, content);
          }
        });
    kept.values().forEach(this::lose);
    live = kept;
    named = new TreeMap<>(kept);
    failing = 0;
    operationsLeft = Integer.MAX_VALUE;
  }

  private void lose(Content content) {
    int unforced = content.bytes.length - content.forced;
    int length = content.forced + (unforced == 0 ? 0 : random.nextInt(unforced + 1));
    byte[] left =
        Arrays.copyOf(content.bytes, random.nextBoolean() ? content.bytes.length : length);
    for (int at = content.forced; at < left.length; ) {
      int end = Math.min(left.length, (at / SECTOR + 1) * SECTOR);
      if (random.nextInt(3) == 0) {
        Arrays.fill(left, at, end, (byte) 0);
      }
      at = end;
    }
    content.bytes = left;
    content.forced = left.length;
  }

  @Override
  public List<Path> list(Path folder) {
    return List.copyOf(live.keySet());
  }

  @Override
  public byte[] read(Path file) throws IOException {
    return content(file).bytes.clone();
  }

  private Content content(Path file) throws IOException {
    Content content = live.get(file);
    if (content == null) {
      throw new NoSuchFileException(file.toString());
    }
    return content;
  }

  @Override
  public Named look(Path file, int tail) throws IOException {
    Content content = content(file);
    int length = content.bytes.length;
    byte[] last = Arrays.copyOfRange(content.bytes, Math.max(0, length - tail), length);
    return Named.of(content, length, last);
  }

  @Override
  public void rename(Path from, Path to) throws IOException {
    operation("renaming");
    Content content = content(from);
    live.remove(from);
    live.put(to, content);
  }

  @Override
  public Output create(Path file) throws IOException {
    operation("creating");
    if (live.containsKey(file)) {
      throw new FileAlreadyExistsException(file.toString());
    }
    Content content = new Content();
    live.put(file, content);
    return new Out(content);
  }

  @Override
  public Output append(Path file) throws IOException {
    operation("opening");
    return new Out(content(file));
  }

  @Override
  public void delete(Path file) throws IOException {
    operation("removing");
    live.remove(file);
  }

  @Override
  public void forceFolder(Path folder) throws IOException {
    operation("forcing the folder");
    named = new TreeMap<>(live);
  }

  private final class Out implements Output {
    private final Content content;

    Out(Content content) {
      this.content = content;
    }

    /** Takes some of the bytes, also when it then fails. */
    @Override
    public int write(ByteBuffer bytes) throws IOException {
      int some = random.nextInt(bytes.remaining() + 1);
      byte[] taken = new byte[some];
      bytes.get(taken);
      int before = content.bytes.length;
      content.bytes = Arrays.copyOf(content.bytes, before + some);
      System.arraycopy(taken, 0, content.bytes, before, some);
      operation("writing");
      return some;
    }

    @Override
    public void force() throws IOException {
      operation("forcing");
      content.forced = content.bytes.length;
    }

    @Override
    public void close() {}
  }
}
