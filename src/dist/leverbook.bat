@echo off
rem Starts Leverbook from the folder it was unpacked into, with the Java of JAVA_HOME or of the path.
setlocal
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
if not "%JAVA%"=="java" goto start
where java >nul 2>nul
if not errorlevel 1 goto start
echo Leverbook needs a JDK 17 or newer, and there is no java on this machine. Install one and start again. 1>&2
exit /b 1
:start
"%JAVA%" -jar "%~dp0leverbook.jar" %*
exit /b %ERRORLEVEL%
