package wherefrom.job.phone;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
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
   * @throws IOException with a plain sentence when it is no picture that can be read
   */
  public Seen read(Path file, Collection<TagCode> issued) throws IOException {
    GreyImage picture = pictures.load(file);
    Reading reading = reader.read(picture, issued);
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

  private static List<String> texts(List<Sighting> sightings) {
    return sightings.stream().map(Sighting::text).distinct().toList();
  }

  /**
   * Copies a picture file into a job's folder.
   *
   * @return its name there
   * @throws IOException with a plain sentence when it is no picture or cannot be copied
   */
  public String keep(Path jobFolder, Path file) throws IOException {
    return photos.add(jobFolder, file);
  }
}
