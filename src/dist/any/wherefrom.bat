@echo off
rem Starts Wherefrom with the Java that is installed, 17 or newer.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
rem Java 17 is the first that knows this option: an older one says so and fails, as one that is missing does.
"%JAVA%" --enable-native-access=ALL-UNNAMED -version >nul 2>&1
if errorlevel 1 goto missing
"%JAVA%" -XX:TieredStopAtLevel=1 --module-path "%~dp0fx" --add-modules javafx.graphics -cp "%~dp0lib\*;%~dp0natives" wherefrom.Main %*
exit /b %errorlevel%

:missing
echo Wherefrom needs Java 17 or newer, 64 bit. Install one, or set JAVA_HOME.
pause
exit /b 2
