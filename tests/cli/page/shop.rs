//! A shop's list dropped on the page: told as `shop` tells it, read where it comes in, kept nowhere.

use std::fs;

use super::served::{Answered, Served, demo};
use crate::program::program;

fn dropped(served: &Served, query: &str, list: &[u8]) -> Answered {
    let heads: String = served.heads().iter().map(|head| format!("{head}\r\n")).collect();
    let head = format!(
        "POST /room/room.yaml/shop?{query} HTTP/1.1\r\n{heads}Connection: close\r\nContent-Length: {}\r\n\r\n",
        list.len()
    );
    served.raw(&[head.as_bytes(), list].concat())
}

/// The text of a part of a page.
fn plain(html: &str) -> String {
    let within = html.split_once("<pre").unwrap_or_else(|| panic!("{html}")).1.split_once('>').unwrap().1;
    let within = within.split_once("</pre>").unwrap().0;
    [("&lt;", "<"), ("&gt;", ">"), ("&quot;", "\""), ("&amp;", "&")]
        .iter()
        .fold(within.to_owned(), |text, (code, sign)| text.replace(code, sign))
}

#[test]
fn a_list_that_is_dropped_is_told_as_the_command_line_tells_it_and_kept_nowhere() {
    let served = Served::file(&demo("which-hand.yaml"));
    let room = served.room().display().to_string();
    let basket = demo("shop/basket.csv");
    let list = served.folder.path().join("elsewhere.csv");
    fs::write(&list, &basket).unwrap();
    let before = fs::read_dir(served.folder.path()).unwrap().count();
    for (query, flags) in [("name=basket.csv", &[][..]), ("name=basket.csv&sets=1", &["--sets"][..])] {
        let told = dropped(&served, query, basket.as_bytes());
        assert_eq!(told.status, 200, "{}", told.text());
        let line = [&["shop"][..], flags, &[&room, list.to_str().unwrap()]].concat();
        let made = String::from_utf8(program(&line).output().unwrap().stdout).unwrap();
        assert!(made.lines().count() > 10, "{made}");
        assert_eq!(plain(&told.text()), made, "{query}");
        assert!(told.text().contains("What fits of basket.csv"));
    }
    assert_eq!(fs::read_dir(served.folder.path()).unwrap().count(), before, "nothing is written");
    assert_eq!(fs::read_to_string(served.room()).unwrap(), demo("which-hand.yaml"));
}

#[test]
fn what_is_wrong_with_a_list_is_told_by_its_line_and_its_name_never_runs() {
    let served = Served::file(&demo("which-hand.yaml"));
    let list = "kind,name,width,depth\nsofa,<script>alert(1)</script>,wide,90\nthrone,x,1,1\n";
    let told = dropped(&served, "name=%3Cb%3Emy.csv", list.as_bytes());
    assert_eq!(told.status, 200);
    let told = told.text();
    assert!(told.contains("list-faults"), "{told}");
    assert!(told.contains("&lt;b&gt;my.csv") && !told.contains("standard input"), "{told}");
    // Word for word what the command line says of the same list.
    let file = served.folder.path().join("my.csv");
    fs::write(&file, list).unwrap();
    let said =
        program(&["shop", &served.room().display().to_string(), file.to_str().unwrap()]).output().unwrap().stderr;
    let said = String::from_utf8(said).unwrap();
    let first = said.lines().next().unwrap();
    assert!(first.contains('2') && plain(&told).contains(first), "{told}\n{said}");
    assert!(!told.contains("<script>") && !told.contains("<b>"), "{told}");
    for list in [&b""[..], &b"\0\0\0"[..], &b"PK\x03\x04 no workbook"[..], &[0xff; 400][..]] {
        let told = dropped(&served, "name=x.csv", list);
        assert!(told.status == 200 && told.text().contains("list-faults"), "{}: {}", told.status, told.text());
    }
    // No more is read than a list may have, and nobody who may not change anything asks for so much work.
    let told = dropped(&served, "name=x.csv", &vec![b'x'; (8 << 20) + 1]);
    assert_eq!(told.status, 413, "{}", told.text());
    let heads = [format!("Host: 127.0.0.1:{}", served.port)];
    assert!(matches!(served.asked("POST", "/room/room.yaml/shop?name=x", &heads, "kind").status, 401 | 403));
    assert_eq!(served.asked("POST", "/room/none.yaml/shop?name=x", &served.heads(), "kind").status, 404);
}
