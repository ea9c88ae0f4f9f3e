package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import wherefrom.files.AtomicFile;
import wherefrom.files.Folders;
import wherefrom.files.Heic;
import wherefrom.files.Incoming;
import wherefrom.job.photos.Photos;

/** Photographs in a job's folder, each named by the SHA-256 of its bytes. */
public final class PhotoFiles implements Photos {
  /** The folder in a job's folder that holds them. */
  public static final String FOLDER = "photos";

  /** Made when a name is first looked at: the window's first picture does without. */
  private static final class Names {
    static final Pattern FORM = Pattern.compile("([0-9a-f]{64})\\.(png|jpg)");
  }

  static final int MOST_BYTES = 200_000_000;

  private final AtomicFile files;

  public PhotoFiles() {
    this(new AtomicFile());
  }

  /**
   * @param files writes the photographs
   */
  public PhotoFiles(AtomicFile files) {
    this.files = files;
  }

  @Override
  public String add(Path jobFolder, Path picture, Set<String> named) throws IOException {
    if (isLogbook(jobFolder, picture)) {
      throw new IOException(
          picture.getFileName() + " is of the job's own logbook. Use a PNG or JPEG file.");
    }
    byte[] read = bytes(picture);
    Map<String, byte[]> names = names(picture, read);
    String name = names.keySet().iterator().next();
    for (String other : names.keySet()) {
      boolean known = named.contains(other) || Files.exists(locate(jobFolder, other));
      name = known ? other : name;
    }
    write(jobFolder, name, names.getOrDefault(name, read));
    return name;
  }

  private void write(Path jobFolder, String name, byte[] photo) throws IOException {
    Path kept = locate(jobFolder, name);
    if (!isThere(jobFolder, name)) {
      try {
        files.write(kept, photo);
        Folders.force(jobFolder);
      } catch (IOException e) {
        throw new IOException(
            "The photograph could not be kept: " + DiskErrors.andRemedy(e) + ".", e);
      }
    }
  }

  @Override
  public Set<String> names(Path picture) throws IOException {
    return names(picture, bytes(picture)).keySet();
  }

  /**
   * What a picture may be called in a job, and the bytes that are kept under that name: without
   * where it was taken; as earlier versions kept it, byte for byte with that place; and what it was
   * called before it went out of a job without its place.
   */
  private static Map<String, byte[]> names(Path picture, byte[] read) throws IOException {
    PictureType type =
        PictureType.find(read).orElseThrow(() -> new IOException(refusal(picture, read)));
    String ending = "." + type.extension();
    byte[] kept = placeless(type, read);
    Map<String, byte[]> names = new LinkedHashMap<>();
    names.put(Sums.digest(kept) + ending, kept);
    names.put(Sums.digest(read) + ending, read);
    PlaceMark.find(read).ifPresent(sum -> names.put(sum + ending, read));
    return names;
  }

  private static byte[] placeless(PictureType type, byte[] read) {
    return type == PictureType.JPEG ? Placeless.of(read) : PlacelessPng.of(read);
  }

  /**
   * A photograph as it goes out of a job: what earlier versions kept with the place where it was
   * taken leaves without, and says under which name the logbook has it. A damaged one stays such.
   *
   * @param name its file's
   */
  static byte[] outgoing(String name, byte[] kept) {
    byte[] out = PictureType.find(kept).map(type -> placeless(type, kept)).orElse(kept);
    String sum = Sums.digest(kept);
    return out != kept && name.startsWith(sum + ".") ? PlaceMark.put(out, sum) : out;
  }

  @Override
  public boolean isThere(Path jobFolder, String name) throws IOException {
    Path kept = locate(jobFolder, name);
    return Files.exists(kept) && isWhole(kept);
  }

  private static String refusal(Path picture, byte[] bytes) {
    String kept = " is not a picture that can be kept. Use a PNG or JPEG file.";
    return picture.getFileName() + (Heic.is(bytes) ? Heic.REMEDY : kept);
  }

  /** Where locks belong to the process, closing a file frees the lock that the job has on it. */
  private static boolean isLogbook(Path jobFolder, Path picture) throws IOException {
    if (!Files.exists(picture)) {
      return false;
    }
    Path real = picture.toRealPath();
    return real.getFileName().toString().startsWith("logbook")
        && Files.isSameFile(real.getParent(), jobFolder);
  }

  private static byte[] bytes(Path picture) throws IOException {
    try {
      return Incoming.read(picture, MOST_BYTES);
    } catch (java.nio.file.FileSystemException e) {
      throw new IOException("The picture cannot be read: " + DiskErrors.of(e) + ".", e);
    }
  }

  @Override
  public Path locate(Path jobFolder, String name) {
    if (!isName(name)) {
      throw new IllegalArgumentException("not the name of a photograph: " + name);
    }
    return jobFolder.resolve(FOLDER).resolve(name);
  }

  /** Whether a photograph can be called so: a sum and an ending, which lead nowhere else. */
  public static boolean isName(String name) {
    return Names.FORM.matcher(name).matches();
  }

  /** Whether a file is what its name says. */
  static boolean isWhole(Path file) throws IOException {
    return isWhole(file, Files.readAllBytes(file));
  }

  /** Whether these bytes are what the file's name says, or are that without their position. */
  static boolean isWhole(Path file, byte[] bytes) {
    String name = String.valueOf(file.getFileName());
    return name.startsWith(Sums.digest(bytes) + ".")
        || PlaceMark.find(bytes).filter(sum -> name.startsWith(sum + ".")).isPresent();
  }
}
