package wherefrom.scan.grease;

import boofcv.abst.fiducial.QrCodeDetector;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import wherefrom.job.image.GreyImage;

/** General readers, to compare with. */
final class OtherReaders {
  private OtherReaders() {}

  /** Texts by reader, in the order of the table. */
  static Map<String, Function<GreyImage, List<String>>> all() {
    Map<String, Function<GreyImage, List<String>>> readers = new LinkedHashMap<>();
    readers.put("ZXing", image -> zxing(image, Map.of()));
    readers.put("ZXing TRY_HARDER", image -> zxing(image, Map.of(DecodeHintType.TRY_HARDER, true)));
    readers.put("ZXing multi", OtherReaders::zxingMulti);
    QrCodeDetector<GrayU8> detector = FactoryFiducial.qrcode(null, GrayU8.class);
    readers.put("BoofCV", image -> boof(detector, image));
    return readers;
  }

  private static BinaryBitmap bitmap(GreyImage image) {
    return new BinaryBitmap(
        new HybridBinarizer(
            new PlanarYUVLuminanceSource(
                image.pixels(),
                image.width(),
                image.height(),
                0,
                0,
                image.width(),
                image.height(),
                false)));
  }

  private static List<String> zxing(GreyImage image, Map<DecodeHintType, ?> more) {
    Map<DecodeHintType, Object> hints = new LinkedHashMap<>(more);
    hints.put(DecodeHintType.POSSIBLE_FORMATS, List.of(BarcodeFormat.QR_CODE));
    try {
      return List.of(new QRCodeReader().decode(bitmap(image), hints).getText());
    } catch (ReaderException none) {
      return List.of();
    }
  }

  private static List<String> zxingMulti(GreyImage image) {
    try {
      List<String> texts = new ArrayList<>();
      for (Result result : new QRCodeMultiReader().decodeMultiple(bitmap(image))) {
        texts.add(result.getText());
      }
      return texts;
    } catch (NotFoundException none) {
      return List.of();
    }
  }

  private static List<String> boof(QrCodeDetector<GrayU8> detector, GreyImage image) {
    GrayU8 grey = new GrayU8(image.width(), image.height());
    System.arraycopy(image.pixels(), 0, grey.data, 0, grey.data.length);
    detector.process(grey);
    return detector.getDetections().stream().map(code -> code.message).toList();
  }
}
