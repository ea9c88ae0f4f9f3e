/**
 * The program and its libraries as the one module of its own runtime; the build puts it together,
 * nothing else compiles it. What a library names in META-INF/services stands here instead.
 */
@SuppressWarnings("module")
open module wherefrom {
  requires java.desktop;
  requires java.logging;
  requires java.management;
  requires java.naming;
  requires java.security.jgss;
  requires java.sql;
  requires java.xml;
  requires javafx.graphics;
  requires jdk.httpserver;
  requires jdk.unsupported;

  uses com.fasterxml.jackson.core.JsonFactory;
  uses com.fasterxml.jackson.core.ObjectCodec;
  uses com.fasterxml.jackson.databind.Module;
  uses java.nio.file.spi.FileSystemProvider;
  uses org.apache.commons.logging.LogFactory;
  uses org.flywaydb.core.extensibility.Plugin;
  uses org.slf4j.spi.SLF4JServiceProvider;

  provides com.fasterxml.jackson.core.JsonFactory with
      com.fasterxml.jackson.core.JsonFactory;
  provides com.fasterxml.jackson.core.ObjectCodec with
      com.fasterxml.jackson.databind.ObjectMapper;
  provides org.slf4j.spi.SLF4JServiceProvider with
      org.slf4j.jul.JULServiceProvider;
  provides org.flywaydb.core.extensibility.Plugin with
      org.flywaydb.core.internal.database.h2.H2DatabaseType,
      org.flywaydb.core.internal.database.sqlite.SQLiteDatabaseType,
      org.flywaydb.core.internal.database.base.TestContainersDatabaseType,
      org.flywaydb.core.internal.schemahistory.BaseAppliedMigration,
      org.flywaydb.core.internal.resource.CoreResourceTypeProvider,
      org.flywaydb.core.internal.configuration.resolvers.EnvironmentVariableResolver,
      org.flywaydb.core.internal.configuration.resolvers.EnvironmentProvisionerNone,
      org.flywaydb.core.internal.configuration.resolvers.PlaceholderPropertyResolver,
      org.flywaydb.core.internal.proprietaryStubs.CheckCommandExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.UndoCommandExtensionStub,
      org.flywaydb.core.api.migration.baseline.BaselineAppliedMigration,
      org.flywaydb.core.api.migration.baseline.BaselineMigrationConfigurationExtension,
      org.flywaydb.core.api.migration.baseline.BaselineMigrationResolver,
      org.flywaydb.core.api.migration.baseline.BaselineResourceTypeProvider,
      org.flywaydb.core.internal.proprietaryStubs.LicensingConfigurationExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.AuthCommandExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.DeployCommandExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.InitCommandExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.DiffCommandExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.ModelCommandExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.DiffTextCommandExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.GenerateCommandExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.PrepareCommandExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.PATTokenConfigurationExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.OfflinePermitConfigurationExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.CherryPickConfigurationExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.CherryPickSupportStub,
      org.flywaydb.core.internal.proprietaryStubs.DryRunSupportStub,
      org.flywaydb.core.internal.proprietaryStubs.AwsSecretsManagerSupportStub,
      org.flywaydb.core.internal.proprietaryStubs.DryRunConfigurationExtensionStub,
      org.flywaydb.core.internal.proprietaryStubs.LicenseSupportStub,
      org.flywaydb.core.internal.scanner.classpath.ClasspathLocationHandlerImpl,
      org.flywaydb.core.internal.scanner.filesystem.FilesystemLocationHandler,
      org.flywaydb.core.internal.NullFlywayTelemetryManager,
      org.flywaydb.core.internal.proprietaryStubs.ShouldExecuteEvaluatorStub,
      org.flywaydb.core.internal.proprietaryStubs.ErrorOverrideInitializerStub,
      org.flywaydb.core.internal.proprietaryStubs.ErrorOverridesSupportStub,
      org.flywaydb.database.postgresql.PostgreSQLDatabaseType,
      org.flywaydb.database.postgresql.PostgreSQLConfigurationExtension,
      org.flywaydb.database.postgresql.authentication.PostgreSQLExternalAuthSupportStub,
      org.flywaydb.database.cockroachdb.CockroachDBDatabaseType,
      org.flywaydb.database.cockroachdb.authentication.CockroachDBExternalAuthSupportStub;
}
