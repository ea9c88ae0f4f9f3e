package wherefrom.pictures;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifReader;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** What a picture file says of the camera, and nothing else of it: the rest may be of any size. */
final class ExifSource {
  private static final int START_BYTES = 8;
  private static final int PNG_START = 0x89504E47;
  private static final int JPEG_START = 0xFFD8;
  private static final int EXIF = 0x65584966;
  private static final int IEND = 0x49454E44;
  private static final int MOST_EXIF = 1_000_000;

  private ExifSource() {}

  /**
   * Reads a file from its first byte on.
   *
   * @param file can be marked
   */
  static Metadata read(InputStream file) throws IOException, ImageProcessingException {
    file.mark(START_BYTES);
    DataInputStream in = new DataInputStream(file);
    int start = in.readInt();
    if (start == PNG_START) {
      in.readInt();
      return ofPng(in);
    }
    file.reset();
    return start >>> 16 == JPEG_START
        ? JpegMetadataReader.readMetadata(file, List.of(new ExifReader()))
        : ImageMetadataReader.readMetadata(file);
  }

  /** W3C PNG, third edition, 11.3.4.5: eXIf. */
  private static Metadata ofPng(DataInputStream in) throws IOException {
    Metadata metadata = new Metadata();
    int type = 0;
    while (type != IEND && type != EXIF) {
      int length = in.readInt();
      type = in.readInt();
      if (length < 0) {
        throw new EOFException();
      }
      if (type == EXIF) {
        byte[] exif = in.readNBytes(Math.min(length, MOST_EXIF));
        new ExifReader().extract(new ByteArrayReader(exif), metadata);
      } else {
        in.skipNBytes(length + 4L);
      }
    }
    return metadata;
  }
}
