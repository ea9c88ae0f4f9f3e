package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;
import wherefrom.ui.sample.HandTicker;

/** The bar is as dark as far as work is, and runs only while nobody can tell. */
class WorkBarTest {
  private final HandTicker ticker = new HandTicker();
  private final WorkBar bar = new WorkBar(ticker);
  private final StackPane pane = new StackPane(bar);

  @BeforeEach
  void inAWindow() {
    Toolkit.on(() -> new Scene(pane));
    bar.resize(200, 10);
  }

  private Region dark() {
    bar.layout();
    return (Region) bar.getChildrenUnmodifiable().get(0);
  }

  @Test
  void itIsDarkAsFarAsTheWorkIs() {
    bar.show(0.25);
    assertThat(dark().getWidth()).isEqualTo(50);
    bar.show(1);
    assertThat(dark().getWidth()).isEqualTo(200);
  }

  @Test
  void aPieceRunsAlongWhileNobodyCanTell() {
    bar.show(-1);
    ticker.pass(500);
    double first = dark().getLayoutX();
    ticker.pass(500);
    assertThat(dark().getLayoutX()).isGreaterThan(first);
    bar.show(0.5);
    ticker.pass(500);
    assertThat(dark().getLayoutX()).isZero();
    assertThat(dark().getWidth()).isEqualTo(100);
  }

  @Test
  void outOfTheWindowItStandsStill() {
    bar.show(-1);
    ticker.pass(500);
    double last = dark().getLayoutX();
    pane.getChildren().clear();
    ticker.pass(500);
    assertThat(dark().getLayoutX()).isEqualTo(last);
    assertThat(ticker.isStill()).isTrue();
  }
}
