@echo off
rem SPDX-License-Identifier: EPL-2.0
rem The command line: 'benchlore --help'. Needs Java 17 or newer, from JAVA_HOME or the path.
setlocal
set "java=java.exe"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
"%java%" -XX:+IgnoreUnrecognizedVMOptions -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xlog:disable -Dfile.encoding=UTF-8 -jar "%~dp0benchlore.jar" %*
