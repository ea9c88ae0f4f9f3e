package wherefrom;

import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.LiveReader;
import wherefrom.job.reader.Reading;
import wherefrom.job.reader.Sighting;
import wherefrom.job.reader.TagReader;
import wherefrom.parts.TagCode;

/** A tag reader that is made when it is first used. */
final class LateReader implements TagReader {
  private final Supplier<TagReader> reader;

  LateReader(Supplier<TagReader> make) {
    reader = new Lazy<>(make);
  }

  @Override
  public Reading read(GreyImage picture, Collection<TagCode> issued) {
    return reader.get().read(picture, issued);
  }

  @Override
  public Reading read(
      GreyImage picture, Collection<TagCode> issued, Supplier<List<TagCode>> elsewhere) {
    return reader.get().read(picture, issued, elsewhere);
  }

  @Override
  public List<Sighting> listForeign(GreyImage picture) {
    return reader.get().listForeign(picture);
  }

  @Override
  public LiveReader live(Collection<TagCode> issued) {
    return reader.get().live(issued);
  }
}
