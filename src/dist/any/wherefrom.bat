@echo off
rem Starts Wherefrom with the Java that is installed, 17 or newer.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 goto missing
"%JAVA%" -version 2>&1 | findstr /r /c:"version .1[7-9]" /c:"version .[2-9][0-9]" >nul
if errorlevel 1 goto missing
"%JAVA%" -XX:TieredStopAtLevel=1 --module-path "%~dp0fx" --add-modules javafx.graphics -cp "%~dp0lib\*;%~dp0natives" wherefrom.Main %*
exit /b %errorlevel%

:missing
echo Wherefrom needs Java 17 or newer, 64 bit. Install one, or set JAVA_HOME.
pause
exit /b 2
