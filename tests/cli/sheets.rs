//! The tape sheet and the shopping card, as text and as a page.

use serde_json::Value;

use crate::program::{Ended, root, run, run_with};

fn scenario(name: &str) -> String {
    root().join("scenarios").join(name).display().to_string()
}

fn refused(ended: &Ended, said: &str) {
    assert_eq!((ended.code, ended.stdout.as_str()), (Some(2), ""), "{ended:?}");
    assert!(ended.stderr.contains(said), "{said}: {}", ended.stderr);
}

/// A length as the card has it, mm.
fn length(told: &str) -> f64 {
    let (number, unit) = told.rsplit_once(' ').unwrap();
    let number = match number.split_once(' ') {
        Some((whole, part)) => {
            let (part, of) = part.split_once('/').unwrap();
            whole.parse::<f64>().unwrap() + part.parse::<f64>().unwrap() / of.parse::<f64>().unwrap()
        }
        _ => number.parse().unwrap(),
    };
    number
        * match unit {
            "cm" => 10.0,
            "in" => 25.4,
            unit => panic!("{unit}"),
        }
}

#[test]
fn the_card_rounds_minima_up_and_maxima_down_in_both_units() {
    for name in ["canal-flat.yaml", "feet-and-inches.yaml", "which-hand.yaml"] {
        let file = scenario(name);
        let card = run(&["card", &file]);
        assert_eq!((card.code, card.stderr.as_str()), (Some(0), ""), "{name}");
        let result: Value = serde_json::from_str(&run(&["rank", "--json", "--top", "1", &file]).stdout).unwrap();
        for piece in result["options"][0]["pieces"].as_array().unwrap() {
            let part = card.stdout.split(&format!("\n{}\n", piece["name"].as_str().unwrap())).nth(1).unwrap();
            for (dimension, figures) in piece["range"].as_object().unwrap().iter().filter(|(_, it)| !it.is_null()) {
                let row = part.lines().find(|line| line.trim_start().starts_with(dimension.as_str())).unwrap();
                let cells: Vec<&str> = row.split("  ").map(str::trim).filter(|cell| !cell.is_empty()).collect();
                let figure = |key: &str| figures[key].as_f64().unwrap();
                let (most, alone) = (figure("together"), figure("alone").max(figure("together")));
                let mut told = vec![(cells[1], figure("least")), (cells[2], figure("planned")), (cells[3], most)];
                // What the piece alone could have is told in a sentence, where it is more.
                let sentence = part.split("\n\n").next().unwrap().split_whitespace().collect::<Vec<_>>().join(" ");
                let sentence =
                    sentence.split("if the others stay smallest: ").nth(1).and_then(|it| it.split(". ").next());
                let mut of_each = sentence.into_iter().flat_map(|it| it.split("; "));
                let found = of_each.find_map(|it| it.strip_prefix(&format!("{dimension} ")));
                assert!(found.is_some() || alone - most < 10.0, "{name}, {row}: {alone} alone, {sentence:?}");
                told.extend(found.map(|cell| (cell, alone)));
                for (place, (cell, exact)) in told.into_iter().enumerate() {
                    for told in cell.split(", ") {
                        let (told, step) = (length(told), if told.ends_with("cm") { 10.0 } else { 12.7 });
                        // One size alone, which no step would tell right, is told as a tape has it: to an eighth.
                        if most - figure("least") < step && (told - exact).abs() < 1.6 {
                            continue;
                        }
                        let off = if place == 0 { told - exact } else { exact - told };
                        // As planned it is told no less than the least is: that may be up by a step.
                        let up = if place == 1 { step } else { 0.01 };
                        assert!((-up..step).contains(&off), "{name}, {row}: {told} for {exact}");
                    }
                }
                assert_eq!(cells[4], "________", "{row}");
            }
        }
    }
}

#[test]
fn a_settled_size_is_told_as_a_tape_reads_it() {
    let file = root().join("tests/data/crooked.yaml").display().to_string();
    let card = run(&["card", &file]).stdout;
    assert!(card.contains("width   193 cm, 76 in   193 cm, 76 in   193 cm, 76 in"), "{card}");
    assert!(card.contains("86.4 cm, 34 in"), "{card}");
}

#[test]
fn the_card_tells_the_hand_as_one_sits() {
    for hand in ["left", "right"] {
        let only = format!("hand={hand}");
        let card = run(&["card", &scenario("which-hand.yaml"), "--only", &only]).stdout;
        let told = card.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(told.contains(&format!("As you SIT on it, the return is on your {}.", hand.to_uppercase())), "{card}");
    }
    let card = run(&["card", &scenario("narrow.yaml")]).stdout;
    assert!(!card.contains("SIT"), "{card}");
}

#[test]
fn the_card_of_an_option_is_the_same_by_rank_and_by_key_and_of_several_has_each() {
    let file = scenario("which-hand.yaml");
    let result: Value = serde_json::from_str(&run(&["rank", "--json", "--top", "1", &file]).stdout).unwrap();
    let key = result["options"][1]["key"].as_str().unwrap();
    assert_eq!(run(&["card", &file, "--option", "2"]).stdout, run(&["card", &file, "--option", key]).stdout);
    let several = run(&["card", &file, "--top", "3"]).stdout;
    let options = result["options"].as_array().unwrap();
    let best: Vec<&Value> = options.iter().filter(|option| option["family"] == option["key"]).take(3).collect();
    assert!(best.len() > 1, "{best:?}");
    for option in best {
        let title = option["title"].as_str().unwrap();
        assert!(several.split_whitespace().collect::<Vec<_>>().join(" ").contains(title), "{title}: {several}");
    }
}

#[test]
fn sheets_are_written_by_their_ending_and_never_over_another() {
    let folder = tempfile::tempdir().unwrap();
    let file = scenario("narrow.yaml");
    for command in ["tape", "card"] {
        let path = folder.path().join(format!("{command}.html")).display().to_string();
        let first = run(&[command, &file, "-o", &path]);
        assert_eq!((first.code, first.stdout.as_str(), first.stderr.as_str()), (Some(0), "", ""), "{first:?}");
        let page = std::fs::read_to_string(&path).unwrap();
        assert!(page.starts_with("<!DOCTYPE html>") && page.ends_with("</html>\n"), "{page}");
        assert_eq!(page, run(&[command, &file, "--format", "html"]).stdout);
        refused(&run(&[command, &file, "-o", &path]), "already there");
        assert_eq!(run(&[command, &file, "-o", &path, "--force"]).code, Some(0));
    }
}

#[test]
fn a_page_says_all_that_the_text_says_and_shows_names_as_text() {
    let text = std::fs::read_to_string(scenario("narrow.yaml")).unwrap();
    let text = text
        .replace("Towpath Terrace 19, through room", "'<script>alert(1)</script>'")
        .replace("street door", "\"a<b>&'c\"");
    assert!(text.contains("<script>") && text.contains("a<b>"));
    for command in ["tape", "card"] {
        let page = run_with(&[command, "-", "--format", "html"], text.as_bytes()).stdout;
        assert!(!page.contains("<script") && !page.contains("<b>"), "{page}");
        assert!(page.contains("&lt;script&gt;alert(1)&lt;/script&gt;"), "{page}");
        assert!(page.contains("default-src &#39;none&#39;") || page.contains("default-src 'none'"), "{page}");
        let plain = page
            .replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&#39;", "'")
            .replace("&quot;", "\"")
            .replace("&amp;", "&");
        let told = run_with(&[command, "-"], text.as_bytes()).stdout;
        let words = |text: &str| {
            text.split(|c: char| !c.is_alphanumeric()).map(str::to_owned).collect::<std::collections::BTreeSet<_>>()
        };
        let missing: Vec<String> = words(&told).difference(&words(&plain)).cloned().collect();
        assert!(missing.is_empty(), "{command}: {missing:?}");
    }
}

#[test]
fn rolls_are_enough_and_no_more() {
    let file = scenario("narrow.yaml");
    let rolls = |roll: &str| {
        let sheet = run(&["tape", &file, "--roll", roll]).stdout.split_whitespace().collect::<Vec<_>>().join(" ");
        let (before, _) = sheet.split_once(" in all: ").unwrap();
        let total: f64 = before.rsplit_once("tape, ").unwrap().1.strip_suffix(" m").unwrap().parse().unwrap();
        let count = sheet.split(" in all: ").nth(1).unwrap().split(' ').next().unwrap().parse::<f64>().unwrap();
        (total, count)
    };
    for (told, metres) in [("50 m", 50.0), ("5", 5.0), ("10 ft", 3.048)] {
        let (total, count) = rolls(told);
        assert!(count * metres >= total && (count - 1.0) * metres < total, "{told}: {count} for {total}");
    }
}

#[test]
fn bad_command_lines_of_sheets_are_refused() {
    let file = scenario("narrow.yaml");
    refused(&run(&["tape", &file, "--roll", "0"]), "roll");
    refused(&run(&["tape", &file, "--roll", "long"]), "roll");
    refused(&run(&["tape", &file, "--option", "99"]), "99");
    refused(&run(&["tape", &file, "--option", "no/such"]), "no/such");
    refused(&run(&["tape", &file, "--format", "odt"]), "html");
    refused(&run(&["tape", &file, "-o", "/no/such/folder/sheet.txt"]), "folder");
    refused(&run(&["card", &file, "--top", "0"]), "top");
    refused(&run(&["card", &file, "--top", "9"]), "top");
    refused(&run(&["card", &file, "--top", "2", "--option", "1"]), "option");
    refused(&run(&["card", &file, "--option", "no/such"]), "no/such");
    for command in ["tape", "card"] {
        let nothing = run(&[command, &scenario("nothing-fits.yaml")]);
        assert_eq!((nothing.code, nothing.stdout.as_str()), (Some(3), ""), "{nothing:?}");
    }
}

#[test]
fn sheets_on_paper_are_whole_documents_of_the_paper_asked_for() {
    let folder = tempfile::tempdir().unwrap();
    let file = root().join("tests/data/settled.yaml").display().to_string();
    for (name, args) in [
        ("tape.pdf", &["tape", &file][..]),
        ("card.pdf", &["card", &file]),
        ("three.pdf", &["card", &file, "--top", "3", "--paper", "letter"]),
        ("compare.pdf", &["compare", &file, "1", "2", "3"]),
    ] {
        let path = folder.path().join(name).display().to_string();
        let ended = run(&[args, &["-o", &path]].concat());
        assert_eq!((ended.code, ended.stderr.as_str()), (Some(0), ""), "{name}");
        let bytes = std::fs::read(&path).unwrap();
        assert!(bytes.starts_with(b"%PDF-") && bytes.len() < 1_000_000, "{name}: {}", bytes.len());
        let again = folder.path().join(format!("again-{name}")).display().to_string();
        run(&[args, &["-o", &again]].concat());
        assert_eq!(std::fs::read(&again).unwrap(), bytes, "{name}: the same input gives the same bytes");
    }
}

#[test]
fn options_side_by_side_make_a_sheet_with_each_plan() {
    let folder = tempfile::tempdir().unwrap();
    let file = root().join("tests/data/settled.yaml").display().to_string();
    let path = folder.path().join("compare.svg").display().to_string();
    assert_eq!(run(&["compare", &file, "1", "2", "-o", &path]).code, Some(0));
    let drawn = std::fs::read_to_string(&path).unwrap();
    assert!(drawn.contains("<svg") && drawn.contains("width=\"297mm\""), "{}", &drawn[..300.min(drawn.len())]);
    let named = drawn.matches(">books").count();
    assert!(named >= 2, "{named}");
    refused(&run(&["compare", &file, "1", "2", "-o", &path]), "already there");
}

#[test]
fn floor_that_stays_open_is_taped_and_drawn_and_not_shopped_for() {
    let file = scenario("family.yaml");
    let tape = run(&["tape", &file]).stdout;
    assert!(tape.contains("It is floor that stays open: tape its outline and put nothing in it."), "{tape}");
    let card = run(&["card", &file]).stdout;
    assert!(card.contains("\nsofa\n") && !card.contains("play mat"), "{card}");
}
