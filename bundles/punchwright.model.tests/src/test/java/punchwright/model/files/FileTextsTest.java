// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;

import org.junit.jupiter.api.Test;

import punchwright.model.Texts;

/** Texts of file problems: complete, and alike in both languages. */
class FileTextsTest {

    @Test
    void sameKeysAndPlaceholdersInEnglishAndGerman() {
        Texts.assertAlike("/punchwright/model/files/files.properties", "/punchwright/model/files/files_de.properties");
    }

    @Test
    void everyProblemHasBothTexts() {
        for (FileProblem problem : FileProblem.values()) {
            for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
                String message = problem.text("message", locale, "FILE", "1", "2", "3");
                assertTrue(message.contains("FILE"), problem + " does not name the file: " + message);
                assertTrue(problem.text("remedy", locale, "FILE", "1", "2", "3").length() > 15, problem.code());
            }
        }
        assertEquals(FileProblem.values().length, java.util.Arrays.stream(FileProblem.values()).map(FileProblem::code)
                .distinct().count());
    }
}
