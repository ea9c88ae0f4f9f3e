package wherefrom.cli;

import java.io.BufferedReader;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.ports.Equipment;

/** Every command, in the order of the job. */
final class Commands {
  private Commands() {}

  static List<Command> all(Equipment equipment, BufferedReader in) {
    List<Command> commands = new ArrayList<>();
    commands.add(new LayoutsCommand(equipment));
    commands.add(new StocksCommand(equipment));
    commands.add(new JobNewCommand(equipment));
    commands.add(JobTrackCommand.of(equipment));
    commands.add(new DemoCommand());
    commands.add(new JobListCommand(equipment));
    commands.add(new ResumeCommand(equipment));
    commands.add(new PlacesCommand(equipment));
    commands.add(new TagsCommand(equipment));
    commands.add(new ReadCommand(equipment));
    commands.add(new OutCommand(equipment, in));
    commands.addAll(TrayCommand.all(equipment));
    commands.add(new WhereCommand(equipment, in));
    commands.addAll(WashCommands.all(equipment));
    commands.addAll(HandlingCommands.all(equipment, in));
    commands.addAll(ShopCommands.all(equipment, in));
    commands.addAll(RetagCommands.all(equipment));
    commands.addAll(MoneyCommands.all(equipment));
    commands.add(new RecordCommand(equipment));
    commands.add(new InspectCommand(equipment));
    commands.add(new PhotoCommand(equipment));
    commands.add(new MeasureCommand(equipment));
    commands.addAll(InstrumentCommands.all(equipment));
    commands.add(new CompareCommand(equipment));
    commands.add(new ClearanceCommand(equipment));
    commands.add(new SizesCommand(equipment));
    commands.addAll(PlanCommands.all(equipment));
    commands.addAll(DebrisCommands.all(equipment));
    commands.addAll(DecideCommands.all(equipment, in));
    commands.add(new FitCommand(equipment, in));
    commands.add(new TakeBackCommand(equipment));
    commands.add(new CyclesCommand(equipment));
    commands.add(new MissingCommand(equipment));
    commands.add(new ExcuseCommand(equipment, in));
    commands.add(new CloseCommand(equipment));
    commands.addAll(TorqueCommands.all(equipment));
    commands.addAll(TimingCommands.all(equipment, in));
    commands.add(new CheckCommand(equipment.checks()));
    commands.add(new BackupCommand(equipment.backups()));
    commands.add(new ExportCommand(equipment));
    commands.add(new ImportCommand(equipment));
    commands.add(new WorkingsCommand());
    commands.add(new ReportCommand(equipment));
    commands.add(new PlanNumbersCommand(equipment));
    return commands;
  }
}
