package wherefrom.job.phone;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;
import wherefrom.job.UnsentException;
import wherefrom.job.image.GreyImage;
import wherefrom.job.photos.Photos;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.TagReader;
import wherefrom.parts.TagCode;

/** Reads the tags on a phone's photographs, and keeps photographs. Asks nothing of a job. */
public record PhonePictures(TagReader reader, Loading pictures, Photos photos) {

  /** Loads picture files. */
  @FunctionalInterface
  public interface Loading {
    /**
     * A picture in grey values, upright.
     *
     * @throws IOException with a plain sentence when the file is no picture that can be read
     */
    GreyImage load(Path file) throws IOException;
  }

  /** A picture that cannot be read; its sentence names no file. */
  public static final class BadPicture extends IOException {
    private static final long serialVersionUID = 1;

    BadPicture(Path file, IOException why) {
      super("The picture " + about(file, String.valueOf(why.getMessage())), why);
    }

    private static String about(Path file, String sentence) {
      for (String named : List.of(file + " ", file.getFileName() + " ")) {
        if (sentence.startsWith(named)) {
          return sentence.substring(named.length());
        }
      }
      return "cannot be read. Take it again.";
    }
  }

  /** A good picture that was not kept, as where the disk is full; its sentence names no file. */
  public static final class NotKept extends IOException {
    private static final long serialVersionUID = 1;

    NotKept(IOException why) {
      super(withoutPath(String.valueOf(why.getMessage())), why);
    }

    private static String withoutPath(String sentence) {
      boolean named = sentence.contains("/") || sentence.contains("\\");
      return named ? "The photograph could not be kept. Is the computer's disk full?" : sentence;
    }
  }

  /**
   * What a picture shows.
   *
   * @param codes each once
   * @param hint what would help where none was read; may be empty
   */
  public record Seen(List<String> codes, String hint) {
    public Seen {
      codes = List.copyOf(codes);
    }
  }

  /**
   * Reads a picture file. A foreign code counts where no tag of ours is there, not even an unread
   * one.
   *
   * @param issued every tag that can be in view
   * @param elsewhere the tags that other jobs printed
   * @throws BadPicture when it is no picture that can be read
   */
  public Seen read(Path file, Collection<TagCode> issued, Supplier<List<TagCode>> elsewhere)
      throws BadPicture {
    GreyImage picture = loaded(file);
    Reading reading = reader.read(picture, issued, elsewhere);
    List<String> ours =
        texts(
            reading.sightings().stream()
                .filter(one -> one.basis() != Sighting.Basis.FOREIGN)
                .toList());
    if (!ours.isEmpty()) {
      return new Seen(ours, "");
    }
    if (!reading.unread().isEmpty()) {
      return new Seen(List.of(), reading.unread().get(0).cause().hint());
    }
    List<String> foreign = texts(reading.sightings());
    return new Seen(foreign.isEmpty() ? texts(reader.listForeign(picture)) : foreign, "");
  }

  private GreyImage loaded(Path file) throws BadPicture {
    try {
      return pictures.load(file);
    } catch (IOException e) {
      throw new BadPicture(file, e);
    }
  }

  private static List<String> texts(List<Sighting> sightings) {
    return sightings.stream().map(Sighting::text).distinct().toList();
  }

  /**
   * Copies a picture file into a job's folder.
   *
   * @return its name there
   * @throws BadPicture when it is none that can be kept
   * @throws NotKept when it cannot be copied
   * @throws UnsentException when the store is out of reach: sent again it is kept once
   */
  public String keep(Path jobFolder, Path file) throws BadPicture, NotKept {
    try {
      photos.names(file);
    } catch (IOException e) {
      throw new BadPicture(file, e);
    }
    try {
      return photos.add(jobFolder, file);
    } catch (IOException e) {
      if (e.getCause() instanceof UnsentException away) {
        throw away;
      }
      throw new NotKept(e);
    }
  }
}
