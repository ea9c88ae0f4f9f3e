package wherefrom.scan;

import com.google.zxing.Binarizer;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.NotFoundException;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.ResultPoint;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Corner;
import wherefrom.job.reader.Sighting;

/** QR codes of any version and text, by an ordinary reader. */
final class ForeignCodes {
  private static final Map<DecodeHintType, Object> HINTS = Map.of(DecodeHintType.TRY_HARDER, true);

  private ForeignCodes() {}

  /** Each text once; marked as foreign whatever it says. */
  static List<Sighting> list(GreyImage picture) {
    PlanarYUVLuminanceSource source =
        new PlanarYUVLuminanceSource(
            picture.pixels(),
            picture.width(),
            picture.height(),
            0,
            0,
            picture.width(),
            picture.height(),
            false);
    List<Sighting> found = onPaper(source);
    // Light on dark, as lasered into metal: a second search, only where the first found nothing.
    return found.isEmpty() ? onPaper(source.invert()) : found;
  }

  private static List<Sighting> onPaper(LuminanceSource source) {
    Map<String, Sighting> byText = new LinkedHashMap<>();
    for (Binarizer binarizer :
        List.of(new HybridBinarizer(source), new GlobalHistogramBinarizer(source))) {
      for (Result result : decode(new BinaryBitmap(binarizer))) {
        byText.putIfAbsent(result.getText(), sighting(result));
      }
    }
    return List.copyOf(byText.values());
  }

  /** Several at once, and the one that a search for a single code finds. */
  private static List<Result> decode(BinaryBitmap bitmap) {
    List<Result> results = new ArrayList<>();
    try {
      results.addAll(Arrays.asList(new QRCodeMultiReader().decodeMultiple(bitmap, HINTS)));
    } catch (NotFoundException none) {
      results.clear();
    }
    try {
      results.add(new QRCodeReader().decode(bitmap, HINTS));
    } catch (ReaderException none) {
      return results;
    }
    return results;
  }

  private static Sighting sighting(Result result) {
    List<Corner> corners = new ArrayList<>();
    for (ResultPoint point : result.getResultPoints()) {
      if (point != null && corners.size() < 4) {
        corners.add(new Corner(point.getX(), point.getY()));
      }
    }
    return new Sighting(result.getText(), Sighting.Basis.FOREIGN, corners);
  }
}
