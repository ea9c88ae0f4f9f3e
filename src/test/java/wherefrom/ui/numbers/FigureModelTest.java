package wherefrom.ui.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;

class FigureModelTest {
  private static FigureModel model(String key, String text) {
    return new FigureModel(PlanModel.input(key), text, UnitSystem.INCH);
  }

  private static void type(FigureModel model, String figures) {
    figures.chars().forEach(each -> model.type(Character.toString(each)));
  }

  @Test
  void aFigureIsTypedWithItsUnitAndHowFarItMayBeOff() {
    FigureModel model = model("bore", "");
    assertThat(model.text()).isEmpty();
    assertThat(model.valueWords()).isEqualTo("not typed, in");
    assertThat(model.spreadWords()).isEqualTo("± not said");
    type(model, "3.900");
    model.choose(true);
    type(model, ".001");
    assertThat(model.valueWords()).isEqualTo("3.900 in");
    assertThat(model.text()).isEqualTo("3.900 in±0.001 in max");
    assertThat(FigureModel.shown(model.text())).isEqualTo("3.900 in ± 0.001 in at most");
    model.turnAtMost();
    assertThat(model.text()).isEqualTo("3.900 in±0.001 in");
  }

  @Test
  void aCommaIsThePointAndASecondMarkIsNotTaken() {
    FigureModel model = model("bore", "");
    type(model, "98,2,5.");
    assertThat(model.text()).isEqualTo("98.25 in");
    model.unit(Unit.MILLIMETRE);
    assertThat(model.text()).isEqualTo("98.25 mm");
  }

  @Test
  void whatWasTypedBeforeIsShownAndTheFirstKeyBeginsAnew() {
    FigureModel model = model("chamber", "63 cc±0.5 cc");
    assertThat(model.valueWords()).isEqualTo("63 cc");
    assertThat(model.spreadWords()).isEqualTo("± 0.5 cc");
    assertThat(model.atMost()).isFalse();
    assertThat(model.text()).isEqualTo("63 cc±0.5 cc");
    type(model, "70");
    assertThat(model.text()).isEqualTo("70 cc±0.5 cc");
    model.choose(true);
    type(model, "1");
    assertThat(model.text()).isEqualTo("70 cc±1 cc");
  }

  @Test
  void erasingGoesOnFromWhatStandsThere() {
    FigureModel model = model("chamber", "63.5 cc");
    model.erase();
    model.erase();
    assertThat(model.text()).isEqualTo("63 cc");
    model.erase();
    model.erase();
    model.erase();
    assertThat(model.text()).isEmpty();
    type(model, "6.");
    assertThat(model.text()).isEqualTo("6.0 cc");
  }

  @Test
  void onlyWhatCanBeNegativeTakesASign() {
    FigureModel dome = model("piston-volume", "-4 cc");
    assertThat(dome.valueWords()).isEqualTo("−4 cc");
    dome.type("-");
    assertThat(dome.text()).isEqualTo("4 cc");
    FigureModel bore = model("bore", "4 in");
    bore.type("-");
    assertThat(bore.canBeNegative()).isFalse();
    assertThat(bore.text()).isEqualTo("4 in");
  }

  @Test
  void anUncertaintyInAnotherUnitIsShownInThatOfTheValue() {
    assertThat(model("bore", "98.298 mm±0.001 in").spreadWords()).isEqualTo("± 0.0254 mm");
  }

  @Test
  void nothingButFiguresIsTakenAndNoMoreThanAGaugeShows() {
    FigureModel model = model("bore", "");
    type(model, "4a e!");
    assertThat(model.text()).isEqualTo("4 in");
    type(model, "0".repeat(40));
    assertThat(model.text()).hasSize("400000000000 in".length());
  }
}
