package wherefrom.server;

import java.sql.SQLException;
import java.sql.Statement;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;

/** The tables of a shop's database, made and brought up to date. */
final class Tables {
  /** The schema that holds them; a database may hold other things. */
  static final String SCHEMA = "wherefrom";

  /** The channel on which the number of a job is told that has a new entry. */
  static final String CHANNEL = "wherefrom";

  private static final String FIRST =
      """
      create table job (
        id integer generated always as identity primary key,
        name text not null unique,
        engine integer not null unique
      );
      create table entry (
        job integer not null references job,
        sequence bigint not null check (sequence > 0),
        sitting uuid not null,
        act bigint not null,
        headers bytea not null default '',
        line bytea not null,
        primary key (job, sequence),
        unique (sitting, act)
      );
      create table photograph (
        job integer not null references job,
        name text not null,
        bytes bytea not null,
        primary key (job, name)
      );
      create function tell_entry() returns trigger language plpgsql as $$
        begin
          perform pg_notify('wherefrom', new.job::text);
          return null;
        end $$;
      create function keep_entry() returns trigger language plpgsql as $$
        begin
          raise exception 'what a logbook holds is never changed';
        end $$;
      create trigger tell_entry after insert on entry
        for each row execute function tell_entry();
      create trigger keep_entry before update or delete on entry
        for each row execute function keep_entry();
      create trigger keep_entries before truncate on entry
        for each statement execute function keep_entry();
      """;

  /** Who holds a bench: entries of a bench are taken from whoever took it last, and nobody else. */
  private static final String BENCHES =
      """
      create table bench (
        job integer not null references job,
        bench integer not null,
        sitting uuid not null,
        primary key (job, bench)
      );
      """;

  /** One step of making the tables; a step that was published never changes. */
  private record Step(String version, String description, String sql) implements JavaMigration {
    @Override
    public MigrationVersion getVersion() {
      return MigrationVersion.fromVersion(version);
    }

    @Override
    public String getDescription() {
      return description;
    }

    @Override
    public Integer getChecksum() {
      return sql.hashCode();
    }

    @Override
    public boolean canExecuteInTransaction() {
      return true;
    }

    @Override
    public void migrate(Context context) throws SQLException {
      try (Statement statement = context.getConnection().createStatement()) {
        statement.execute(sql);
      }
    }
  }

  private Tables() {}

  /** Makes the tables where they are not there, or brings older ones up to date. */
  static void prepare(javax.sql.DataSource server) {
    FluentConfiguration flyway =
        Flyway.configure()
            .dataSource(server)
            .schemas(SCHEMA)
            .defaultSchema(SCHEMA)
            .locations(new String[0])
            .loggers("slf4j")
            .javaMigrations(new Step("1", "entries", FIRST), new Step("2", "benches", BENCHES));
    flyway.load().migrate();
  }
}
