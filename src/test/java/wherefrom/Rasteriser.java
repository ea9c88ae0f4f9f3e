package wherefrom;

import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Makes a PNG file of each page of a PDF file: where no other rasteriser is installed. */
public final class Rasteriser {
  private Rasteriser() {}

  /**
   * @param words the PDF file, the dots per inch, the folder for the pictures
   */
  public static void main(String[] words) throws IOException {
    try (PDDocument document = Loader.loadPDF(Path.of(words[0]).toFile())) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        Path png = Path.of(words[2]).resolve("page-" + (page + 1) + ".png");
        int dpi = Integer.parseInt(words[1]);
        ImageIO.write(renderer.renderImageWithDPI(page, dpi, ImageType.GRAY), "png", png.toFile());
      }
    }
  }
}
