package wherefrom.print;

import boofcv.abst.fiducial.QrCodeDetector;
import boofcv.alg.fiducial.qrcode.QrCode;
import boofcv.factory.fiducial.ConfigQrCode;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.factory.filter.binary.ConfigThreshold;
import boofcv.struct.image.GrayU8;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.List;
import java.util.Map;

/** Two decoders from two code bases. */
final class Decoders {
  private static final int MIDDLE_GREY = 127;

  private final QrCodeDetector<GrayU8> global = boof(ConfigThreshold.fixed(MIDDLE_GREY));
  private final QrCodeDetector<GrayU8> local = boof(new ConfigQrCode().threshold);

  private static QrCodeDetector<GrayU8> boof(ConfigThreshold threshold) {
    ConfigQrCode config = new ConfigQrCode();
    config.threshold = threshold;
    return FactoryFiducial.qrcode(config, GrayU8.class);
  }

  /** What the one reads; empty when it reads nothing. */
  String zxing(Raster raster) {
    var source =
        new PlanarYUVLuminanceSource(
            raster.pixels(),
            raster.width(),
            raster.height(),
            0,
            0,
            raster.width(),
            raster.height(),
            false);
    try {
      return new QRCodeReader()
          .decode(
              new BinaryBitmap(new HybridBinarizer(source)),
              Map.of(DecodeHintType.TRY_HARDER, true))
          .getText();
    } catch (ReaderException e) {
      return "";
    }
  }

  /**
   * Every symbol that the other finds, with its version, level and mode. It looks with one
   * threshold for the whole raster, which has no shadows, and if it sees nothing at all, with its
   * own.
   */
  List<QrCode> boofcv(Raster raster) {
    GrayU8 image = new GrayU8(raster.width(), raster.height());
    image.data = raster.pixels();
    global.process(image);
    if (!global.getDetections().isEmpty()) {
      return global.getDetections();
    }
    local.process(image);
    return local.getDetections();
  }
}
