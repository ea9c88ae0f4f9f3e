package wherefrom.scan.picture;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.stream.ImageInputStream;
import wherefrom.files.Outgoing;
import wherefrom.job.image.ColourImage;
import wherefrom.job.image.GreyImage;
import wherefrom.job.ports.Pictures;
import wherefrom.job.tray.PictureMark;
import wherefrom.pictures.ColourFile;
import wherefrom.pictures.ExifOrientation;
import wherefrom.pictures.PictureGate;

/**
 * Picture files of every format Java reads: PNG, JPEG, GIF, BMP, WBMP and TIFF. JPEG files in
 * colour are decoded to their luminance alone, one byte a pixel. A picture that would fill the
 * memory is read at a half, a third… of its size. Of a JPEG file that breaks off, the rows it has
 * are read.
 */
public final class PictureFiles implements Pictures {
  /** A picture is held as it is stored and in grey values; this much of the memory may go to it. */
  private static final int SHARE_OF_MEMORY = 3;

  private static final long MOST_MEMORY = 400_000_000;

  private final long memory;

  public PictureFiles() {
    this(Math.min(MOST_MEMORY, Runtime.getRuntime().maxMemory() / SHARE_OF_MEMORY));
  }

  /**
   * @param memory how many bytes a picture may take
   */
  PictureFiles(long memory) {
    this.memory = memory;
  }

  @Override
  public GreyImage load(Path file) throws IOException {
    PictureFault.refuseUnlessFile(file);
    pass(file);
    try (ImageInputStream stream = ImageIO.createImageInputStream(file.toFile())) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
      if (!readers.hasNext()) {
        throw PictureFault.noPicture(file);
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(stream, true, true);
        return load(file, reader);
      } catch (PictureGate.TooMuch tooMuch) {
        throw PictureFault.tooMuch(file, tooMuch);
      } catch (IOException | RuntimeException | OutOfMemoryError damaged) {
        throw PictureFault.damaged(file, damaged);
      } finally {
        reader.dispose();
      }
    }
  }

  @Override
  public ColourImage loadColour(Path file, int longest) throws IOException {
    PictureFault.refuseUnlessFile(file);
    try {
      BufferedImage picture = ColourFile.read(() -> Files.newInputStream(file), longest);
      int width = picture.getWidth();
      int height = picture.getHeight();
      return new ColourImage(width, height, picture.getRGB(0, 0, width, height, null, 0, width));
    } catch (PictureGate.TooMuch tooMuch) {
      throw PictureFault.tooMuch(file, tooMuch);
    } catch (IOException damaged) {
      throw PictureFault.damaged(file, damaged);
    }
  }

  private static void pass(Path file) throws IOException {
    try {
      PictureGate.pass(() -> Files.newInputStream(file));
    } catch (PictureGate.TooMuch tooMuch) {
      throw PictureFault.tooMuch(file, tooMuch);
    }
  }

  @Override
  public void saveMarked(GreyImage picture, List<PictureMark> marks, Outgoing png)
      throws IOException {
    MarkedPicture.save(picture, marks, png);
  }

  private GreyImage load(Path file, ImageReader reader) throws IOException {
    int width = reader.getWidth(0);
    int height = reader.getHeight(0);
    PictureGate.requireSize(width, height);
    Optional<ImageTypeSpecifier> type = leanestType(reader);
    int bytes = type.map(PictureFiles::bytesPerPixel).orElse(InkSamples.BANDS);
    int divisor = divisor((long) width * height, bytes + 1);
    ImageReadParam param = reader.getDefaultReadParam();
    param.setSourceSubsampling(divisor, divisor, 0, 0);
    ExifOrientation orientation = ExifOrientation.of(file);
    if (isInk(reader, type)) {
      Raster raster = reader.readRaster(0, param);
      return ofInk(raster, InkSamples.of(file), orientation);
    }
    type.ifPresent(param::setDestinationType);
    BufferedImage picture = reader.read(0, param);
    UprightPixels upright = new UprightPixels(picture.getWidth(), picture.getHeight(), orientation);
    GreyRows.copy(picture, upright);
    return upright.image();
  }

  private static GreyImage ofInk(Raster raster, InkSamples ink, ExifOrientation orientation) {
    UprightPixels upright = new UprightPixels(raster.getWidth(), raster.getHeight(), orientation);
    GreyRows.copyInk(raster, ink, upright);
    return upright.image();
  }

  /** Only the JPEG reader gives samples raw; four of them are print colours. */
  private static boolean isInk(ImageReader reader, Optional<ImageTypeSpecifier> type) {
    return reader.canReadRaster()
        && type.map(ImageTypeSpecifier::getNumBands).orElse(InkSamples.BANDS) == InkSamples.BANDS;
  }

  /** Grey where the format can decode to it, else what it decodes to by itself. */
  private static Optional<ImageTypeSpecifier> leanestType(ImageReader reader) throws IOException {
    Iterator<ImageTypeSpecifier> types = reader.getImageTypes(0);
    Optional<ImageTypeSpecifier> first = Optional.empty();
    while (types.hasNext()) {
      ImageTypeSpecifier type = types.next();
      if (type.getBufferedImageType() == BufferedImage.TYPE_BYTE_GRAY) {
        return Optional.of(type);
      }
      first = first.isPresent() ? first : Optional.of(type);
    }
    return first;
  }

  private static int bytesPerPixel(ImageTypeSpecifier type) {
    ColorModel model = type.getColorModel();
    return Math.max(1, model.getPixelSize() / 8);
  }

  private int divisor(long pixels, int bytesPerPixel) {
    int divisor = 1;
    while (pixels / divisor / divisor * bytesPerPixel > memory) {
      divisor++;
    }
    return divisor;
  }
}
