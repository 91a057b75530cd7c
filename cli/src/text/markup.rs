//! Markup of a page, built so that text can only be text: what comes from a file is escaped where it is put in.

use std::fmt::Write;

use super::safe::safe;

/// A page, or a part of one, that grows at its end.
#[derive(Debug, Default)]
pub(crate) struct Markup {
    html: String,
    open: Vec<&'static str>,
}

impl Markup {
    /// Opens an element with these attributes; an empty value stands for an attribute that needs none.
    pub(crate) fn open(&mut self, tag: &'static str, attributes: &[(&str, &str)]) -> &mut Self {
        self.start(tag, attributes);
        self.open.push(tag);
        self
    }

    /// Closes the element that was opened last.
    pub(crate) fn close(&mut self) -> &mut Self {
        if let Some(tag) = self.open.pop() {
            let _ = write!(self.html, "</{tag}>");
        }
        self
    }

    /// The same with a line feed, so that a page can be read by people too.
    pub(crate) fn end(&mut self) -> &mut Self {
        self.close();
        self.html.push('\n');
        self
    }

    /// Text, shown as it is.
    pub(crate) fn text(&mut self, text: &str) -> &mut Self {
        self.html.push_str(&escaped(text));
        self
    }

    /// A whole element that holds text.
    pub(crate) fn element(&mut self, tag: &'static str, attributes: &[(&str, &str)], text: &str) -> &mut Self {
        self.open(tag, attributes).text(text).end()
    }

    /// The same within a line.
    pub(crate) fn inline(&mut self, tag: &'static str, attributes: &[(&str, &str)], text: &str) -> &mut Self {
        self.open(tag, attributes).text(text).close()
    }

    /// An element that holds nothing and is not closed.
    pub(crate) fn void(&mut self, tag: &'static str, attributes: &[(&str, &str)]) -> &mut Self {
        self.start(tag, attributes);
        self.html.push('\n');
        self
    }

    /// Markup of our own making.
    pub(crate) fn raw(&mut self, markup: &str) -> &mut Self {
        self.html.push_str(markup);
        self
    }

    /// The markup, whatever is open closed.
    pub(crate) fn finished(mut self) -> String {
        while !self.open.is_empty() {
            self.close();
        }
        self.html
    }

    fn start(&mut self, tag: &str, attributes: &[(&str, &str)]) {
        let _ = write!(self.html, "<{tag}");
        for (name, value) in attributes {
            let _ = if value.is_empty() {
                write!(self.html, " {name}")
            } else {
                write!(self.html, " {name}=\"{}\"", escaped(value))
            };
        }
        self.html.push('>');
    }
}

/// Text as XML and HTML take it: shown, never obeyed. What no XML may hold is left out.
pub(crate) fn escaped(text: &str) -> String {
    let mut shown = String::with_capacity(text.len());
    for letter in safe(text).chars() {
        match letter {
            '&' => shown.push_str("&amp;"),
            '<' => shown.push_str("&lt;"),
            '>' => shown.push_str("&gt;"),
            '"' => shown.push_str("&quot;"),
            '\'' => shown.push_str("&#39;"),
            '\u{fffe}' | '\u{ffff}' => shown.push('\u{fffd}'),
            letter => shown.push(letter),
        }
    }
    shown
}

#[cfg(test)]
mod tests {
    use super::Markup;

    #[test]
    fn text_and_attributes_stay_what_they_are() {
        let mut markup = Markup::default();
        markup.open("p", &[("title", "\"><script>"), ("hidden", "")]).text("</p><b>&");
        assert_eq!(markup.finished(), "<p title=\"&quot;&gt;&lt;script&gt;\" hidden>&lt;/p&gt;&lt;b&gt;&amp;</p>");
    }
}
