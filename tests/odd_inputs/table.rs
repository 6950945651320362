//! Hostile and odd inputs, each with what is said: line and column, the message, and the first way on.
//!
//! An input that is taken has "taken".
// Long because it is one table.

/// Typed ends.
pub const LINES: &[(&str, &str)] = &[
    ("", "?:1 no arrow is named here | for example \"R 0, 7 r31 u8\""),
    (" ,, ", "1:1 no arrow is named here | for example \"R 0, 7 r31 u8\""),
    ("R", "1:1 where did R hit? | type r31 u8, 2h8, 0 for the spot, x for lost or b for broken"),
    (
        "R 0, 7",
        "1:6 where did 7 hit? | type r31 u8, 2h8, 0 for the spot, x for lost or b for broken",
    ),
    ("7 r", "1:4 a number was expected here | for example 12 or 12.5"),
    (
        "7 r31 z8",
        "1:7 \"z8\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    ("7 31r", "1:3 \"31r\" is not a word of the line | did you mean \"r31\"?"),
    ("7 r31 u8 r2", "1:10 this was said already | take one of the two out"),
    ("7 r3 l2", "1:6 this was said already | take one of the two out"),
    ("7 0 r2", "1:5 this was said already | take one of the two out"),
    ("7 2h8 r2", "1:7 this was said already | take one of the two out"),
    ("R 0, R 0", "1:6 shaft R stands here twice | take one of the two out"),
    (
        "R 0, 77 r1",
        "1:6 there is no shaft \"77\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "r31 u8",
        "1:1 there is no shaft \"r31\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    ("r 0", "1:1 there is no shaft \"r\" in this journal | did you mean \"R\"?"),
    ("0 r3", "1:1 there is no shaft \"0\" in this journal | did you mean \"10\"?"),
    ("7 rNaN", "1:4 a number was expected here | for example 12 or 12.5"),
    ("7 rnan", "1:4 a number was expected here | for example 12 or 12.5"),
    ("7 rinf", "1:4 a number was expected here | for example 12 or 12.5"),
    ("7 r-inf", "1:4 a number was expected here | for example 12 or 12.5"),
    ("7 r1e999", "1:5 \"e999\" is not a unit of length here | use mm, cm, in, ft, yd or m"),
    ("7 r1e3", "1:5 \"e3\" is not a unit of length here | use mm, cm, in, ft, yd or m"),
    ("7 r0x1f", "1:5 \"x1f\" is not a unit of length here | use mm, cm, in, ft, yd or m"),
    ("7 r--3", "1:4 a number was expected here | for example 12 or 12.5"),
    ("7 r-3", "1:4 the letter says the side: no sign is needed | r right, l left, u up, d down"),
    ("7 r+3", "taken"),
    ("7 r3.1.2", "1:7 a second decimal point | write one number with one point"),
    ("7 r3..2", "1:6 a second decimal point | write one number with one point"),
    ("7 r.", "1:4 a number was expected here | for example 12 or 12.5"),
    (
        "7 r1,5",
        "1:5 a new arrow, or a decimal? | write decimals with a point, and put a blank after a comma that parts arrows",
    ),
    (
        "7 r1,5 u8,9",
        "1:5 a new arrow, or a decimal? | write decimals with a point, and put a blank after a comma that parts arrows",
    ),
    ("7 r1;5", "1:5 \";5\" is not a unit of length here | use mm, cm, in, ft, yd or m"),
    ("7 r1'000", "1:5 \"'000\" is not a unit of length here | use mm, cm, in, ft, yd or m"),
    ("7 r1_000", "1:5 \"_000\" is not a unit of length here | use mm, cm, in, ft, yd or m"),
    (
        "7 r1 000",
        "1:6 \"000\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    ("7 r٣", "1:4 a number was expected here | for example 12 or 12.5"),
    ("7 r３", "1:4 a number was expected here | for example 12 or 12.5"),
    ("7 r½", "1:4 a number was expected here | for example 12 or 12.5"),
    ("7 r3″", "1:5 \"″\" is not a unit of length here | write it \"in\""),
    ("7 r3\"", "1:5 \"\"\" is not a unit of length here | write it \"in\""),
    ("7 r3'", "1:5 \"'\" is not a unit of length here | write it \"ft\""),
    ("7 r3inch", "1:5 \"inch\" is not a unit of length here | write it \"in\""),
    ("7 r3inn", "1:5 \"inn\" is not a unit of length here | did you mean \"in\"?"),
    ("7 r3mn", "1:5 \"mn\" is not a unit of length here | did you mean \"mm\"?"),
    ("7 r3gr", "1:5 \"gr\" is a unit of mass, not of length | use mm, cm, in, ft, yd or m"),
    ("7 r3kg", "1:5 \"kg\" is not a unit of length here | use mm, cm, in, ft, yd or m"),
    ("7 r3deg", "1:5 \"deg\" is a unit of angle, not of length | use mm, cm, in, ft, yd or m"),
    ("7 r3%", "1:5 \"%\" is not a unit of length here | use mm, cm, in, ft, yd or m"),
    (
        "7 r3100",
        "1:3 3100 mm is too much: at most 3000 mm either way | check the number and its unit",
    ),
    (
        "7 r4m",
        "1:3 4000 mm is too much: at most 3000 mm either way | check the number and its unit",
    ),
    (
        "7 r119in",
        "1:3 3022.6 mm is too much: at most 3000 mm either way | check the number and its unit",
    ),
    (
        "7 d3001mm",
        "1:3 -3001 mm is too much: at most 3000 mm either way | check the number and its unit",
    ),
    (
        "7 r1111111111111111111111",
        "1:4 more digits than can have been measured | a tenth of a millimetre is as fine as a tape is read",
    ),
    ("7 2h", "1:5 a number was expected here | for example 12 or 12.5"),
    ("7 0h8", "1:3 no clock has this hour | hours run from 1 to 12; half past two is 2.5"),
    ("7 13h8", "1:3 no clock has this hour | hours run from 1 to 12; half past two is 2.5"),
    ("7 25h8", "1:3 no clock has this hour | hours run from 1 to 12; half past two is 2.5"),
    ("7 2.5.5h8", "1:6 a second decimal point | write one number with one point"),
    (
        "7 h8",
        "1:3 \"h8\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    ("7 2hh8", "1:5 a number was expected here | for example 12 or 12.5"),
    (
        "7 -2h8",
        "1:3 \"-2h8\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    ("7 2h-8", "1:5 the letter says the side: no sign is needed | r right, l left, u up, d down"),
    (
        "7 2:30h8",
        "1:3 \"2:30h8\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 2h4000",
        "1:3 4000 mm is too much: at most 3000 mm either way | check the number and its unit",
    ),
    ("7 0 i0", "1:6 no clock has this hour | hours run from 1 to 12; half past two is 2.5"),
    ("7 0 i13", "1:6 no clock has this hour | hours run from 1 to 12; half past two is 2.5"),
    (
        "7 0 i400deg",
        "1:6 this is more than a whole turn | marks are from 0 to 360 degrees, or hours from 1 to 12",
    ),
    ("7 0 i-1deg", "taken"),
    ("7 0 i12mm", "1:8 \"mm\" is a unit of length, not of angle | use deg"),
    ("7 0 i", "1:6 a number was expected here | for example 12 or 12.5"),
    ("7 0 inan", "1:6 a number was expected here | for example 12 or 12.5"),
    (
        "7 0 t",
        "1:6 \"t\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 t2",
        "1:6 toward which side does the tail stand off? | tl2 is 2 degrees left; tr right, tu high, td low, t10h2 by clock",
    ),
    (
        "7 0 tx",
        "1:6 \"tx\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 tl61",
        "1:5 -61 deg is too much: at most 60 deg either way | check the number and its unit",
    ),
    (
        "7 0 tl700mm",
        "1:5 700 mm is too much: at most 519 mm either way | check the number and its unit",
    ),
    (
        "7 0 tl600mm s61cm",
        "1:5 600 mm is too much: at most 528 mm either way | check the number and its unit",
    ),
    ("7 0 tl-2", "1:7 the letter says the side: no sign is needed | r right, l left, u up, d down"),
    ("7 0 tul", "1:7 \"tul\" is not a word of the line | did you mean \"t10.5h\"?"),
    ("7 0 tllots", "1:7 \"tllots\" is not a word of the line | did you mean \"tlm\"?"),
    (
        "7 0 tsome",
        "1:6 toward which side does the tail stand off? | tl2 is 2 degrees left; tr right, tu high, td low, t10h2 by clock",
    ),
    ("7 0 tl2kg", "1:8 \"kg\" is not a unit of angle here | did you mean \"deg\"?"),
    (
        "7 0 tl2cm tu1",
        "1:11 one tail is read one way: degrees, a tape, or an eye | give both sides of it in degrees, or both with a unit of length",
    ),
    ("7 0 t0 tl2", "1:8 this was said already | take one of the two out"),
    ("7 0 tn t0", "1:8 this was said already | take one of the two out"),
    (
        "7 0 tl2 s62cm",
        "1:9 how far arrows stick out says something only of a tail that was read by tape | for example tl2cm s62cm; take it out where tails are in degrees",
    ),
    (
        "7 0 s62cm",
        "1:5 how far arrows stick out says something only of a tail that was read by tape | for example tl2cm s62cm; take it out where tails are in degrees",
    ),
    (
        "7 0 tl2cm s0cm",
        "1:11 0 mm cannot be: more than 0 and at most 1500 mm | check the number and its unit",
    ),
    (
        "7 0 tl2cm s2m",
        "1:11 2000 mm cannot be: more than 0 and at most 1500 mm | check the number and its unit",
    ),
    ("7 0 t13h2", "1:6 no clock has this hour | hours run from 1 to 12; half past two is 2.5"),
    ("7 0 g p", "1:7 this was said already | take one of the two out"),
    ("7 0 p p", "1:7 this was said already | take one of the two out"),
    ("7 0 good", "1:5 \"good\" is not a word of the line | did you mean \"g\"?"),
    ("7 0 por", "1:5 \"por\" is not a word of the line | did you mean \"p\"?"),
    ("7 0 lost", "1:5 \"lost\" is not a word of the line | did you mean \"x\"?"),
    (
        "7 x y",
        "1:5 \"y\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 !",
        "1:5 \"!\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    ("7 0 ?", "1:5 \"?\" is not a word of the line | did you mean \"q\"?"),
    (
        "7 0 <script>alert(1)</script>",
        "1:5 \"<script>alert(1)</script>\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 ${HOME}",
        "1:5 \"${home}\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 `id`",
        "1:5 \"`id`\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 $(id)",
        "1:5 \"$(id)\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 %s%n",
        "1:5 \"%s%n\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 ../../etc/passwd",
        "1:5 \"../../etc/passwd\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 ' OR 1=1 --",
        "1:5 \"'\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 \u{1b}[31m",
        "1:5 \"\\u{1b}[31m\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 \u{1b}]0;title\u{7}",
        "1:5 \"\\u{1b}]0;title\\u{7}\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 \u{202e}abc",
        "1:5 \"\\u{202e}abc\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    ("7 0 r\u{200b}3", "1:6 a number was expected here | for example 12 or 12.5"),
    (
        "\u{feff}R 0",
        "1:1 there is no shaft \"\\u{feff}R\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "7 0 \u{1}",
        "1:5 \"\\u{1}\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 \u{7f}",
        "1:5 \"\\u{7f}\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 \u{9b}31m",
        "1:5 \"\\u{9b}31m\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    ("7 r3\u{a0}u8", "taken"),
    (
        "7\tr3 z",
        "1:9 \"z\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "größe r3",
        "1:1 there is no shaft \"größe\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "７ r3",
        "1:1 there is no shaft \"７\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "7 r3 🎯",
        "1:6 \"🎯\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "7 0 =1+1",
        "1:5 \"=1+1\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "R 0 / 7 r3",
        "1:5 \"/\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "R: 0",
        "1:1 there is no shaft \"R:\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "7=r3",
        "1:1 where did 7=r3 hit? | type r31 u8, 2h8, 0 for the spot, x for lost or b for broken",
    ),
    ("7 r3 t0.", "taken"),
    (
        "null",
        "1:1 where did null hit? | type r31 u8, 2h8, 0 for the spot, x for lost or b for broken",
    ),
    (
        "{\"shots\":[]}",
        "1:1 where did {\"shots\":[]} hit? | type r31 u8, 2h8, 0 for the spot, x for lost or b for broken",
    ),
    (
        "7 r3 u8 # remark",
        "1:9 \"#\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
    (
        "R 0,7 r3,9 l4",
        "1:9 a new arrow, or a decimal? | write decimals with a point, and put a blank after a comma that parts arrows",
    ),
    (
        "7 r3 zzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzz",
        "1:6 ...^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ \"zzzzzzzzzzzzzzzzzzzzzzzzzzzzzz...\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them",
    ),
];

/// Ends as JSON.
pub const JSON_ENDS: &[(&str, &str)] = &[
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\"}]}",
        "1:43 this shot has no hit | give x_mm and y_mm, or flag it lost or broken",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"x_mm\":1,\"y_mm\":2}]}",
        "1:43 \"shaft\" is missing | give it; docs/machine-interface.md has every name",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":7,\"x_mm\":1,\"y_mm\":2}]}",
        "1:52 text in quotes is expected here, not a number | put it in quotes",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"\",\"x_mm\":1,\"y_mm\":2}]}",
        "1:52 there is no shaft \"\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\" 7\",\"x_mm\":1,\"y_mm\":2}]}",
        "1:52 there is no shaft \" 7\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"77\",\"x_mm\":1,\"y_mm\":2}]}",
        "1:52 there is no shaft \"77\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"r\",\"x_mm\":1,\"y_mm\":2}]}",
        "1:52 there is no shaft \"r\" in this journal | did you mean \"R\"?",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":\"1\",\"y_mm\":2}]}",
        "1:63 a number is expected here, not text in quotes | for example 12 or 12.5, without quotes",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":\"31mm\",\"y_mm\":2}]}",
        "1:63 a number is expected here, not text in quotes | for example 12 or 12.5, without quotes",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":null,\"y_mm\":2}]}",
        "1:63 a number is expected here, not null | leave out what is not known",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":true,\"y_mm\":2}]}",
        "1:63 a number is expected here, not true or false | for example 12 or 12.5, without quotes",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":[1],\"y_mm\":2}]}",
        "1:63 a number is expected here, not a list in brackets | for example 12 or 12.5, without quotes",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":NaN,\"y_mm\":2}]}",
        "1:63 this is not JSON: expected value | look for a comma, a quote or a brace just before it",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":Infinity,\"y_mm\":2}]}",
        "1:63 this is not JSON: expected value | look for a comma, a quote or a brace just before it",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1e999,\"y_mm\":2}]}",
        "1:67 this is not JSON: number out of range | look for a comma, a quote or a brace just before it",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1e300,\"y_mm\":2}]}",
        "1:63 1e300 mm is too much: at most 3000 mm either way | check the number and its unit",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":-0.0,\"y_mm\":2}]}",
        "taken",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,5,\"y_mm\":2}]}",
        "1:65 this is not JSON: key must be a string | look for a comma, a quote or a brace just before it",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":+1,\"y_mm\":2}]}",
        "1:63 this is not JSON: expected value | look for a comma, a quote or a brace just before it",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":.5,\"y_mm\":2}]}",
        "1:63 this is not JSON: expected value | look for a comma, a quote or a brace just before it",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":0x1f,\"y_mm\":2}]}",
        "1:64 this is not JSON: expected `,` or `}` | look for a comma, a quote or a brace just before it",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":3001,\"y_mm\":2}]}",
        "1:63 3001 mm is too much: at most 3000 mm either way | check the number and its unit",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1}]}",
        "1:63 this says nothing without \"y_mm\" | give \"y_mm\" too, or leave this out",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_cm\":1,\"y_mm\":2}]}",
        "1:63 \"x_cm\" is not read here: \"x_mm\" is expected, in millimetres | convert it and name it x_mm",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_cm\":1,\"y_cm\":2}]}",
        "1:63 \"x_cm\" is not read here: \"x_mm\" is expected, in millimetres | convert it and name it x_mm",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x\":1,\"y\":2}]}",
        "1:60 \"x\" is not read here: \"x_mm\" is expected, in millimetres | convert it and name it x_mm",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_in\":2}]}",
        "1:72 \"y_in\" is not read here: \"y_mm\" is expected, in millimetres | convert it and name it y_mm",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"x_mm\":3}]}",
        "1:81 \"x_mm\" stands here twice | take one of the two out",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"lean_x_rad\":0.1}]}",
        "1:87 \"lean_x_rad\" is not read here: \"lean_x_deg\" is expected, in degrees | convert it and name it lean_x_deg",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"lean_x_deg\":1}]}",
        "1:87 this says nothing without \"lean_y_deg\" | give \"lean_y_deg\" too, or leave this out",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"lean_x_deg\":61,\"lean_y_deg\":0}]}",
        "1:87 61 deg is too much: at most 60 deg either way | check the number and its unit",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"index_deg\":400}]}",
        "1:86 400 deg is too much: at most 360 deg either way | check the number and its unit",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"index_deg\":-361}]}",
        "1:86 -361 deg is too much: at most 360 deg either way | check the number and its unit",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"index_deg\":\"3\"}]}",
        "1:86 a number is expected here, not text in quotes | for example 12 or 12.5, without quotes",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"call\":\"por\"}]}",
        "1:81 \"por\" is not known here | did you mean \"poor\"?",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"call\":\"Good\"}]}",
        "1:81 \"Good\" is not known here | did you mean \"good\"?",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"flags\":\"wind\"}]}",
        "1:82 a list in brackets is expected here, not text in quotes | put brackets round it",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"flags\":[\"wnd\"]}]}",
        "1:83 \"wnd\" is not known here | did you mean \"wind\"?",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"flags\":[null]}]}",
        "1:83 text in quotes is expected here, not null | leave out what is not known",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"read_sd_mm\":0}]}",
        "1:87 0 mm cannot be: more than 0 and at most 1000 mm | check the number and its unit",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"read_sd_mm\":-1}]}",
        "1:87 -1 mm cannot be: more than 0 and at most 1000 mm | check the number and its unit",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"lean_sd_deg\":1}]}",
        "1:88 this says nothing without \"lean_x_deg\" | give \"lean_x_deg\" too, or leave this out",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"out_mm\":5}]}",
        "1:65 this says nothing without \"toward_deg\" | give \"toward_deg\" too, or leave this out",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"out_mm\":5,\"toward_deg\":720}]}",
        "1:80 720 deg is too much: at most 360 deg either way | check the number and its unit",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"tail_x_mm\":5}]}",
        "1:86 this says nothing without \"tail_y_mm\" | give \"tail_y_mm\" too, or leave this out",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"tail_x_mm\":700,\"tail_y_mm\":0}]}",
        "1:86 700 mm is too much: at most 519 mm either way | check the number and its unit",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"tail_seen\":\"lots\"}]}",
        "1:86 \"lots\" is not known here | known: none, some, much, side",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"tail_seen\":\"sme\",\"tail_toward_deg\":90}]}",
        "1:86 \"sme\" is not known here | did you mean \"some\"?",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"tail_seen\":\"some\"}]}",
        "1:86 this says nothing without \"tail_toward_deg\" | give \"tail_toward_deg\" too, or leave this out",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"tail_toward_deg\":90}]}",
        "1:92 this says nothing without \"tail_seen\" | give \"tail_seen\" too, or leave this out",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,\"protruding_mm\":600}]}",
        "1:90 this says nothing without \"tail_x_mm\" | give \"tail_x_mm\" too, or leave this out",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"R\",\"x_mm\":1,\"y_mm\":2},{\"shaft\":\"R\",\"x_mm\":1,\"y_mm\":2}]}",
        "1:84 shaft R stands here twice | take one of the two out",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"\\u202e7\",\"x_mm\":1,\"y_mm\":2}]}",
        "1:52 there is no shaft \"\\u{202e}7\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\\u0000\",\"x_mm\":1,\"y_mm\":2}]}",
        "1:52 there is no shaft \"7\\u{0}\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2]}",
        "1:73 this is not JSON: expected `,` or `}` | look for a comma, a quote or a brace just before it",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{\"shaft\":\"7\",\"x_mm\":1,\"y_mm\":2,}]}",
        "1:74 this is not JSON: trailing comma | look for a comma, a quote or a brace just before it",
    ),
    (
        "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":0,\"y_mm\":0},{'shaft':'7'}]}",
        "1:44 this is not JSON: key must be a string | look for a comma, a quote or a brace just before it",
    ),
    (
        "",
        "1:1 this is not JSON: the text ends too early | look for a comma, a quote or a brace just before it",
    ),
];

/// Tables and exports, imported from standard input.
pub const TABLES: &[(&str, &str)] = &[
    ("", "1:1 there is no table here | for example: shaft,x_mm,y_mm and below it 7,31,8"),
    ("\n\n", "1:1 there is no table here | for example: shaft,x_mm,y_mm and below it 7,31,8"),
    (
        "shaft,x_mm,y_mm",
        "1:1 there is no line below the names of the columns | for example: shaft,x_mm,y_mm and below it 7,31,8",
    ),
    (
        "shaft,x_mm,y_mm\n77,1,2",
        "2:1 there is no shaft \"77\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    ("shaft,x_mm,y_mm\nR,1,2\nR,1,2", "3:1 shaft R stands here twice | take one of the two out"),
    ("shaft,x,y\n7,1,2", "1:7 ^ in which unit is \"y\"? | call it x_mm, x_cm or x_in"),
    ("shaft,x_m,y_m\n7,1,2", "1:7 ^^^ in which unit is \"y_m\"? | call it x_mm, x_cm or x_in"),
    (
        "Shaft,X_MM,Y_MM\n7,1,",
        "2:3 this says nothing without \"y_mm\" | give \"y_mm\" too, or leave this out",
    ),
    ("shft,x_mm,y_mm\n7,1,2", "1:1 no column is called \"shft\" | did you mean \"shaft\"?"),
    (
        "shaft,x_mm,y_mm,\n7,1,2,",
        "1:17 no column is called \"\" | take the column out, or give it one of the names in docs/import-export.md",
    ),
    (
        "shaft,x_mm,x_cm,y_mm\n7,1,2,3",
        "1:12 another column says this already | take one of the two out",
    ),
    (
        "arrow,x_mm,y_mm\n7,1,2",
        "1:1 no column is called \"arrow\" | take the column out, or give it one of the names in docs/import-export.md",
    ),
    (
        "shaft,x_mm,y_mm\n7,1",
        "2:1 this line has 2 cells, and there are 3 columns | put a cell with a comma, a semicolon or a line end in quotes",
    ),
    (
        "shaft,x_mm,y_mm\n7,1,2,3",
        "2:1 this line has 4 cells, and there are 3 columns | put a cell with a comma, a semicolon or a line end in quotes",
    ),
    (
        "shaft,x_mm,y_mm\n7,1,5,2",
        "2:1 this line has 4 cells, and there are 3 columns | put a cell with a comma, a semicolon or a line end in quotes",
    ),
    (
        "shaft,x_mm,y_mm\n7,\"1,5\",2",
        "2:3 a decimal comma, or thousands? | write decimals with a point, or part the columns with semicolons; thousands have no mark",
    ),
    (
        "shaft;x_mm;y_mm\n7;1,234;2",
        "2:3 a decimal comma, or thousands? | write decimals with a point, or part the columns with semicolons; thousands have no mark",
    ),
    (
        "shaft;x_mm;y_mm\n7;1.234,5;2",
        "2:3 a decimal comma, or thousands? | write decimals with a point, or part the columns with semicolons; thousands have no mark",
    ),
    (
        "shaft;x_mm;y_mm\n7;1,2,3;2",
        "2:3 a decimal comma, or thousands? | write decimals with a point, or part the columns with semicolons; thousands have no mark",
    ),
    (
        "shaft,x_mm,y_mm\n7,NaN,2",
        "2:3 a number was expected here | for example 12 or 12.5; leave the cell blank where it is not known",
    ),
    (
        "shaft,x_mm,y_mm\n7,inf,2",
        "2:3 a number was expected here | for example 12 or 12.5; leave the cell blank where it is not known",
    ),
    ("shaft,x_mm,y_mm\n7,1e999,2", "2:3 this number is too large | check the number and its unit"),
    (
        "shaft,x_mm,y_mm\n7,0x1f,2",
        "2:3 the unit is in the name of the column | write the number alone",
    ),
    (
        "shaft,x_mm,y_mm\n7,=1+1,2",
        "2:3 a number was expected here | for example 12 or 12.5; leave the cell blank where it is not known",
    ),
    (
        "shaft,x_mm,y_mm\n7,'1,2",
        "2:3 a number was expected here | for example 12 or 12.5; leave the cell blank where it is not known",
    ),
    (
        "shaft,x_mm,y_mm\n7,31mm,2",
        "2:3 the unit is in the name of the column | write the number alone",
    ),
    (
        "shaft,x_mm,y_mm\n7,3 in,2",
        "2:3 the unit is in the name of the column | write the number alone",
    ),
    (
        "shaft,x_mm,y_mm\n7,123456789012345678901234,2",
        "2:3 more digits than can have been measured | a tenth of a millimetre is as fine as a tape is read",
    ),
    (
        "shaft,x_mm,y_mm\n7,4000,2",
        "2:3 4000 mm is too much: at most 3000 mm either way | check the number and its unit",
    ),
    (
        "shaft,x_mm,y_mm\n7,,2",
        "2:4 this says nothing without \"x_mm\" | give \"x_mm\" too, or leave this out",
    ),
    (
        "shaft,x_mm,y_mm\n7,,",
        "2:1 this shot has no hit | give x_mm and y_mm, or flag it lost or broken",
    ),
    (
        "shaft,x_mm,y_mm\n,1,2",
        "2:1 whose shot is this? | write the name of the shaft or the reference",
    ),
    (
        "shaft,x_mm,y_mm\n\"7,1,2",
        "2:1 this quote is not closed | end the cell with a quote, and double the quotes inside it",
    ),
    ("shaft,x_mm,y_mm,flags\n7,1,2,wnd", "2:7 \"wnd\" is not known here | did you mean \"wind\"?"),
    ("shaft,x_mm,y_mm,call\n7,1,2,bad", "2:7 \"bad\" is not known here | known: good, poor"),
    (
        "shaft,x_mm,y_mm,at\n7,1,2,yesterday",
        "2:7 \"yesterday\" is not a time with its date and zone | write it like 2027-03-02T10:15:00Z",
    ),
    (
        "shaft,x_mm,y_mm,index_deg\n7,1,2,400",
        "2:7 400 deg is too much: at most 360 deg either way | check the number and its unit",
    ),
    (
        "shaft,x_mm,y_mm,index_hour\n7,1,2,13",
        "2:7 390 deg is too much: at most 360 deg either way | check the number and its unit",
    ),
    (
        "shaft,x_mm,y_mm,index\n7,1,2,4",
        "1:17 in which unit is \"index\"? | call it index_deg or index_hour",
    ),
    (
        "shaft,x_mm,y_mm,distance_m\n7,1,2,-18",
        "2:7 -18 m cannot be: more than 0 and at most 200 m | check the number and its unit",
    ),
    (
        "shaft,x_mm,y_mm,distance_mm\n7,1,2,18",
        "1:17 in which unit is \"distance_mm\"? | call it distance_m, distance_yd or distance_ft",
    ),
    (
        "shaft,x_mm,y_mm,kind\n7,1,2,edn",
        "2:7 \"edn\" is not a kind of entry | did you mean \"end\"?",
    ),
    (
        "shaft,x_mm,y_mm,kind\n7,1,2,bow",
        "2:7 an entry of this kind needs its data | take it from the export, or leave the line out",
    ),
    (
        "shaft,x_mm,y_mm,kind,data\n,,,undo,\"{\"\"seq\"\":1}\"",
        "2:1 the record 1 that this speaks of is not in the file | import the whole export",
    ),
    (
        "shaft,x_mm,y_mm,kind,data\n,,,bow,{}",
        "2:8 this cannot be read: it is neither a change nor a reason to leave it | write it with `export`, and leave it as it is",
    ),
    (
        "shaft,x_mm,y_mm,record_id\n7,1,2,zz",
        "2:7 this is not an id of 16 hexadecimal digits | leave the column out where the table was written by hand",
    ),
    (
        "shaft,x_mm,y_mm,record\n7,1,2,-1",
        "2:7 this is not the number of a record | leave the column out where the table was written by hand",
    ),
    (
        "shaft,x_mm,y_mm,recorded_at\n7,1,2,noon",
        "2:7 this is not a time like 2027-03-02T10:15:00Z | leave the column out where the table was written by hand",
    ),
    (
        "shaft,x_mm,y_mm,evening\n7,1,2,eeeeeeeeeeeeeeeeeeeeeeeeeeeeeeeeeeeeeeeee",
        "2:7 an evening is named by 1 to 40 characters on one line | for example 2027-03-02",
    ),
    (
        "shaft,x_mm,y_mm\n\u{1b}[31m,1,2",
        "2:1 there is no shaft \"\\u{1b}[31m\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "shaft,x_mm,y_mm\n\u{202e}7,1,2",
        "2:1 there is no shaft \"\\u{202e}7\" in this journal | it has 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, R",
    ),
    (
        "\u{1b}[31m,x_mm\n7,1",
        "1:1 no column is called \"\\u{1b}[31m\" | take the column out, or give it one of the names in docs/import-export.md",
    ),
    (
        "shaft|x_mm|y_mm\n7|1|2",
        "1:1 no column is called \"shaft|x_mm|y_mm\" | take the column out, or give it one of the names in docs/import-export.md",
    ),
    (
        "{\"schema\":\"other\"}",
        "1:18 this is no export: missing field `records` | write it with `export`, and leave it as it is",
    ),
    (
        "{",
        "1:1 this is no export: EOF while parsing an object | write it with `export`, and leave it as it is",
    ),
    (
        "{\"schema\":\"quarterturn.export/1\",\"records\":[{\"record\":1}]}",
        "1:45 this cannot be read: missing field `record_id` | write it with `export`, and leave it as it is",
    ),
    (
        "not a table at all",
        "1:1 no column is called \"not a table at all\" | take the column out, or give it one of the names in docs/import-export.md",
    ),
    ("shaft;x_mm;y_mm\n7;1,5;2", "taken"),
    ("shaft\tx_mm\ty_mm\n7\t1\t2", "taken"),
    ("shaft,x_mm,y_mm\r\n7,1,2\r\n", "taken"),
    ("shaft,x_mm,y_mm\r7,1,2\r", "taken"),
    ("\u{feff}shaft,x_mm,y_mm\n7,1,2", "taken"),
    ("\"shaft\",\"x_mm\",\"y_mm\"\n\"7\",\"1\",\"2\"", "taken"),
    ("shaft,x_in,y_cm\n7,1,2", "taken"),
];

/// Lists of shafts.
pub const NAMES: &[(&str, &str)] = &[
    (
        "a b",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    ("", "?:1 a shaft is missing here | for example 1-12 or 1,2,5-8,A"),
    ("1,,2", "1:3 a shaft is missing here | for example 1-12 or 1,2,5-8,A"),
    ("8-5", "1:1 this range runs backwards | put the smaller number first"),
    ("1-99", "1:1 more than 72 shafts | begin a journal for each set of arrows"),
    ("1-99999999999", "1:1 more than 72 shafts | begin a journal for each set of arrows"),
    (
        "../x",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    (
        "a/b",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    (
        "=1",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    (
        "<b>",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    (
        "\u{1b}[1m",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    (
        "\u{202e}1",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    (
        "\u{200b}",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    (
        "xxxxxxxxxxxxxxxxx",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    ("1,1", "1:3 shaft 1 stands here twice | take one of the two out"),
    ("7,R", "1:1 shaft R stands here twice | take one of the two out"),
    (
        "\"1\"",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    (
        "1;2",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    (
        "a\tb",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
    (
        "ｅ\u{302}",
        "1:1 this cannot name a shaft | a shaft's name is 1 to 16 letters, digits, '-', '_' or '.'",
    ),
];

/// Options of `new` and their values.
pub const OPTIONS: &[(&str, &str, &str)] = &[
    (
        "distance",
        "-18m",
        "1:1 -18 m cannot be: more than 0 and at most 200 m | check the number and its unit",
    ),
    (
        "distance",
        "0m",
        "1:1 0 m cannot be: more than 0 and at most 200 m | check the number and its unit",
    ),
    ("distance", "18", "1:3 a length needs a unit | write 18mm, 18cm, 18in, 18ft, 18yd or 18m"),
    ("distance", "18,3m", "1:3 a decimal comma | write decimals with a point: 18.3m"),
    (
        "distance",
        "1e999m",
        "1:2 \"e999m\" is not a unit of length here | use mm, cm, in, ft, yd or m",
    ),
    ("distance", "NaNm", "1:1 a number was expected here | for example 12 or 12.5"),
    ("distance", "18.3yards", "1:5 \"yards\" is not a unit of length here | write it \"yd\""),
    (
        "distance",
        "18.3 gr",
        "1:6 \"gr\" is a unit of mass, not of length | use mm, cm, in, ft, yd or m",
    ),
    (
        "distance",
        "201m",
        "1:1 201 m cannot be: more than 0 and at most 200 m | check the number and its unit",
    ),
    ("distance", "\u{1b}[31m", "1:1 a number was expected here | for example 12 or 12.5"),
    (
        "tolerance",
        "-25mm",
        "1:1 -25 mm cannot be: more than 0 and at most 3000 mm | check the number and its unit",
    ),
    ("tolerance", "25", "1:3 a length needs a unit | write 25mm, 25cm, 25in, 25ft, 25yd or 25m"),
    ("tolerance", "far", "1:1 a number was expected here | for example 12 or 12.5"),
    (
        "tolerance",
        "4m",
        "1:1 4000 mm cannot be: more than 0 and at most 3000 mm | check the number and its unit",
    ),
    (
        "index",
        "1=400",
        "1:3 this is more than a whole turn | marks are from 0 to 360 degrees, clockwise from 12 o'clock",
    ),
    ("index", "1=", "1:3 a number was expected here | for example 12 or 12.5"),
    ("index", "99=30", "1:1 there is no such shaft in --shafts | name it in --shafts too"),
    (
        "index",
        "1",
        "1:1 where does the mark of this shaft stand? | for example 7=180, in degrees clockwise from 12 o'clock",
    ),
    ("index", "1=3mm", "1:4 \"mm\" is a unit of length, not of angle | use deg"),
    (
        "bare-lighter",
        "-20gr",
        "1:1 -20 gr cannot be: more than 0 and at most 5000 gr | check the number and its unit",
    ),
    ("bare-lighter", "20", "1:3 a mass needs a unit | write 20gr, 20g or 20lb"),
    ("arrow-speed", "82", "the following required arguments were not provided:"),
];

/// Files of typed ends, byte by byte.
pub const FILES: &[(&[u8], &str)] = &[
    (b"\xff\xfeR\x00 \x000\x00", "f is not text in UTF-8 | it is in UTF-16: save it as UTF-8"),
    (b"\xfe\xff\x00R\x00 \x000", "f is not text in UTF-8 | it is in UTF-16: save it as UTF-8"),
    (b"gr\xf6\xdfe 0", "f is not text in UTF-8 | save it as UTF-8"),
    (b"\xef\xbb\xbfR 0", "taken"),
    (b"R 0\x0d\x0a7 r3\x0d\x0a", "taken"),
    (b"R 0\x0d7 r3", "1:9 \"7\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them"),
    (b"R 0\x007 r3", "1:3 \"0\\u{0}7\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them"),
    (b"", "there is no end in f | for example a line \"R 0, 7 r31 u8\""),
    (b"\x0a \x0a", "there is no end in f | for example a line \"R 0, 7 r31 u8\""),
    (b"\x80\x81\x82\x83\x84\x85\x86\x87\x88\x89\x8a\x8b\x8c\x8d\x8e\x8f\x90\x91\x92\x93\x94\x95\x96\x97\x98\x99\x9a\x9b\x9c\x9d\x9e\x9f\xa0\xa1\xa2\xa3\xa4\xa5\xa6\xa7\xa8\xa9\xaa\xab\xac\xad\xae\xaf\xb0\xb1\xb2\xb3\xb4\xb5\xb6\xb7\xb8\xb9\xba\xbb\xbc\xbd\xbe\xbf\xc0\xc1\xc2\xc3\xc4\xc5\xc6\xc7\xc8\xc9\xca\xcb\xcc\xcd\xce\xcf\xd0\xd1\xd2\xd3\xd4\xd5\xd6\xd7\xd8\xd9\xda\xdb\xdc\xdd\xde\xdf\xe0\xe1\xe2\xe3\xe4\xe5\xe6\xe7\xe8\xe9\xea\xeb\xec\xed\xee\xef\xf0\xf1\xf2\xf3\xf4\xf5\xf6\xf7\xf8\xf9\xfa\xfb\xfc\xfd\xfe\xff", "f is not text in UTF-8 | save it as UTF-8"),
    (b"R 0\x0a\x0a7 r3 z8\x0a", "3:6 \"z8\" is not a word of the line | the words are r l u d and h for a hit, t and s for a tail, i for a mark, and the letters g p w k n q x b; `quarterturn help end` explains them"),
];

/// Names that look alike, and the two that are told.
pub const ALIKE: &[(&str, &str)] = &[
    ("1,l", "\"1\" and \"l\""),
    ("A,a", "\"A\" and \"a\""),
    ("1,01", "\"1\" and \"01\""),
    ("O,0", "\"O\" and \"0\""),
    ("А,A", "\"А\" and \"A\""),
    ("７,7", "\"７\" and \"7\""),
    ("r,5", "\"r\" and \"R\""),
];

/// Notes, and how `log` shows them, blanks apart.
pub const NOTES: &[(&str, &str)] = &[
    ("<script>alert(1)</script>", "<script>alert(1)</script>"),
    ("<img src=x onerror=alert(1)>", "<img src=x onerror=alert(1)>"),
    ("</text></svg>", "</text></svg>"),
    ("]]>", "]]>"),
    ("<!--", "<!--"),
    ("&lt;b&gt;", "&lt;b&gt;"),
    ("&#x202e;", "&#x202e;"),
    ("\"><svg/onload=1>", "\"><svg/onload=1>"),
    ("javascript:alert(1)", "javascript:alert(1)"),
    ("=1+1", "=1+1"),
    ("=cmd|'/C calc'!A0", "=cmd|'/C calc'!A0"),
    ("+1", "+1"),
    ("-1", "-1"),
    ("@SUM(A1)", "@SUM(A1)"),
    ("=HYPERLINK(\"http://x.example\",\"y\")", "=HYPERLINK(\"http://x.example\",\"y\")"),
    ("\t=1+1", "\t=1+1"),
    ("\r=1+1", "\\u{d}=1+1"),
    ("'=1", "'=1"),
    ("'", "'"),
    ("''", "''"),
    ("%0A=1", "%0A=1"),
    ("\u{1b}[31mred", "\\u{1b}[31mred"),
    ("\u{1b}]0;title\u{7}", "\\u{1b}]0;title\\u{7}"),
    ("\u{1b}[2J", "\\u{1b}[2J"),
    ("\u{9b}31m", "\\u{9b}31m"),
    ("\u{90}", "\\u{90}"),
    ("\u{7}", "\\u{7}"),
    ("\u{8}\u{8}", "\\u{8}\\u{8}"),
    ("\u{7f}", "\\u{7f}"),
    ("\u{0}", "\\u{0}"),
    ("\u{1}", "\\u{1}"),
    ("\u{202e}abc", "\\u{202e}abc"),
    ("\u{2066}abc\u{2069}", "\\u{2066}abc\\u{2069}"),
    ("\u{200b}", "\\u{200b}"),
    ("\u{200d}", "\\u{200d}"),
    ("\u{feff}", "\\u{feff}"),
    ("\u{61c}", "\\u{61c}"),
    ("\u{2028}", "\\u{2028}"),
    ("\u{2029}", "\\u{2029}"),
    ("\u{ad}", "\u{ad}"),
    ("\u{e0041}", "\\u{e0041}"),
    ("../../etc/passwd", "../../etc/passwd"),
    ("/etc/passwd", "/etc/passwd"),
    ("C:\\Windows", "C:\\Windows"),
    ("\\\\server\\share", "\\\\server\\share"),
    ("CON", "CON"),
    ("a/b", "a/b"),
    ("${HOME}", "${HOME}"),
    ("$(id)", "$(id)"),
    ("`id`", "`id`"),
    ("; rm -rf .", "; rm -rf ."),
    ("| cat", "| cat"),
    ("%s%n%x", "%s%n%x"),
    ("{{7*7}}", "{{7*7}}"),
    ("' OR 1=1 --", "' OR 1=1 --"),
    ("NaN", "NaN"),
    ("1e999", "1e999"),
    ("null", "null"),
    ("true", "true"),
    ("{}", "{}"),
    ("[]", "[]"),
    ("\"", "\""),
    ("\"\"", "\"\""),
    ("a,b", "a,b"),
    ("a;b", "a;b"),
    ("a\tb", "a\tb"),
    ("a\nb", "a\nb"),
    ("a\r\nb", "a\\u{d}\nb"),
    ("a\"b", "a\"b"),
    ("größer", "größer"),
    ("é e\u{301}", "é e\u{301}"),
    ("中文", "中文"),
    ("🎯", "🎯"),
    ("ال", "ال"),
    ("Z\u{351}\u{34b}\u{343}a\u{34a}", "Z\u{351}\u{34b}\u{343}a\u{34a}"),
    (
        "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx",
        "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx",
    ),
    (" leading", " leading"),
    ("trailing ", "trailing "),
    ("#ref", "#ref"),
    ("end 1", "end 1"),
    ("undo", "undo"),
];
