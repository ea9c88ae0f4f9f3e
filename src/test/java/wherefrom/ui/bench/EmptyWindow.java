package wherefrom.ui.bench;

import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** The smallest window: nothing is in it. To compare with. */
public final class EmptyWindow extends Application {
  public static void main(String[] arguments) {
    Application.launch(EmptyWindow.class);
  }

  @Override
  public void start(Stage stage) {
    stage.setScene(new Scene(new StackPane(), 1280, 800));
    stage.setTitle("Wherefrom");
    stage.setMaximized(true);
    stage.show();
  }
}
