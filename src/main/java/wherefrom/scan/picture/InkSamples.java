package wherefrom.scan.picture;

import com.drew.imaging.ImageProcessingException;
import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.metadata.adobe.AdobeJpegDirectory;
import com.drew.metadata.adobe.AdobeJpegReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * The samples of a JPEG file in four print colours: cyan, magenta, yellow, black. Which way they
 * are stored is told by the APP14 marker (ITU-T T.872, 6.5.3): with it, inks are stored inverted
 * (255 is no ink), as they are or as luminance, chrominance and black; without it, 0 is no ink.
 */
enum InkSamples {
  PLAIN {
    @Override
    int grey(int[] samples, int at) {
      int light = MOST - samples[at + BLACK];
      return GreyRows.luminance(MOST - samples[at], MOST - samples[at + 1], MOST - samples[at + 2])
          * light
          / MOST;
    }
  },
  INVERTED {
    @Override
    int grey(int[] samples, int at) {
      return GreyRows.luminance(samples[at], samples[at + 1], samples[at + 2])
          * samples[at + BLACK]
          / MOST;
    }
  },
  /** The luminance is that of the inks, the black is inverted. */
  LUMINANCE {
    @Override
    int grey(int[] samples, int at) {
      return (MOST - samples[at]) * samples[at + BLACK] / MOST;
    }
  };

  static final int BANDS = 4;
  private static final int BLACK = 3;
  private static final int MOST = 255;
  private static final int LUMINANCE_TRANSFORM = 2;

  /** The grey value of a pixel whose samples begin at an index. */
  abstract int grey(int[] samples, int at);

  static InkSamples of(Path file) {
    try {
      AdobeJpegDirectory marker =
          JpegMetadataReader.readMetadata(file.toFile(), List.of(new AdobeJpegReader()))
              .getFirstDirectoryOfType(AdobeJpegDirectory.class);
      if (marker == null) {
        return PLAIN;
      }
      Integer transform = marker.getInteger(AdobeJpegDirectory.TAG_COLOR_TRANSFORM);
      return transform != null && transform == LUMINANCE_TRANSFORM ? LUMINANCE : INVERTED;
    } catch (ImageProcessingException | IOException | RuntimeException noMetadata) {
      return PLAIN;
    }
  }
}
