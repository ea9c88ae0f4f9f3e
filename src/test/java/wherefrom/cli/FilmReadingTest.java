package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.parts.LabelFrame;
import wherefrom.parts.SymbolLayout;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;
import wherefrom.parts.TagType;
import wherefrom.scan.camera.ClipMaker;
import wherefrom.scan.camera.TagPictures;

/** What a phone filmed is read as the live picture is. */
class FilmReadingTest {
  private static final TagCode FIRST = new TagCode(TagType.PART, 4_711_023, 17, 1);
  private static final TagCode SECOND = new TagCode(TagType.PART, 4_711_023, 18, 1);

  @TempDir Path folder;
  private Shop shop;

  @BeforeEach
  void open() {
    shop = new Shop(folder);
  }

  private Path film(String name) {
    List<BufferedImage> frames = new ArrayList<>();
    for (TagCode tag : List.of(FIRST, SECOND, FIRST)) {
      for (int frame = 0; frame < 4; frame++) {
        frames.add(TagPictures.of(tag, 320, 240, 5 * frame));
      }
    }
    return ClipMaker.write(folder.resolve(name), frames);
  }

  @Test
  void eachTagOfAFilmIsReadOnce() {
    Path film = film("bench.MP4");
    Shop.Outcome outcome = shop.run("read", film.toString());
    assertThat(outcome.status()).as(outcome.toString()).isZero();
    assertThat(outcome.out().lines())
        .hasSize(2)
        .satisfiesExactly(
            line -> assertThat(line).contains("bench.MP4", FIRST.digits()),
            line -> assertThat(line).contains("bench.MP4", SECOND.digits()));
  }

  @Test
  void aFilmWithoutATagSaysSo() {
    List<BufferedImage> grey = List.of(new BufferedImage(64, 48, BufferedImage.TYPE_BYTE_GRAY));
    Path film = ClipMaker.write(folder.resolve("empty.avi"), grey);
    Shop.Outcome outcome = shop.run("read", film.toString());
    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("empty.avi: no tag was found.");
  }

  @Test
  void aTagThatWasSeenAndNotReadIsSaidOnceForTheWholeFilm() throws IOException {
    List<BufferedImage> frames = Collections.nCopies(6, spoilt());
    Path film = ClipMaker.write(folder.resolve("spoilt.avi"), frames);
    Shop.Outcome outcome = shop.run("read", "--json", film.toString());
    JsonNode rows = new ObjectMapper().readTree(outcome.out());
    assertThat(outcome.status()).as(outcome.toString()).isEqualTo(1);
    assertThat(rows).hasSize(1);
    assertThat(rows.get(0).get("unread").asText()).isNotEmpty();
  }

  /** One of our labels, of whose digits nothing is left. */
  private static BufferedImage spoilt() {
    int dots = 6;
    int side = (LabelFrame.WIDTH + 20) * dots;
    SplittableRandom random = new SplittableRandom(6);
    BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, side, side);
    graphics.setColor(Color.BLACK);
    for (int module = 0; module < LabelFrame.WIDTH * LabelFrame.WIDTH; module++) {
      int row = module / LabelFrame.WIDTH;
      int column = module % LabelFrame.WIDTH;
      if (isDark(row, column, random)) {
        graphics.fillRect((column + 10) * dots, (row + 10) * dots, dots, dots);
      }
    }
    graphics.dispose();
    return image;
  }

  private static boolean isDark(int row, int column, SplittableRandom random) {
    int down = row - LabelFrame.INSET;
    int across = column - LabelFrame.INSET;
    if (Math.min(down, across) < 0 || Math.max(down, across) >= TagSymbol.SIZE) {
      return LabelFrame.isFrame(row, column);
    }
    return SymbolLayout.isFixed(down, across)
        ? SymbolLayout.isFixedDark(down, across)
        : random.nextBoolean();
  }

  @Test
  void whatIsNoFilmGetsASentence() throws IOException {
    Path text = Files.writeString(folder.resolve("text.mov"), "not a film");
    Shop.Outcome outcome = shop.run("read", text.toString(), folder.resolve("no.mp4").toString());
    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err())
        .contains("\"text.mov\" cannot be opened as a clip. The file is damaged or not a video.")
        .contains("\"no.mp4\" cannot be opened as a clip. The file is not there.");
  }
}
