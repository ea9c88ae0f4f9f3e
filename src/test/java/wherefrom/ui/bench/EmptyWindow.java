package wherefrom.ui.bench;

import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** The smallest window with the looks that come with JavaFX, to compare with. */
public final class EmptyWindow extends Application {
  public static void main(String[] arguments) {
    Application.launch(EmptyWindow.class);
  }

  @Override
  public void start(Stage stage) {
    stage.setScene(new Scene(new StackPane(new Label("Wherefrom")), 1280, 800));
    stage.setTitle("Wherefrom");
    stage.setMaximized(true);
    stage.show();
  }
}
