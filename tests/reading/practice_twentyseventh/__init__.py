"""The twenty-seventh set: sheets as designers' offices draw them by hand, export them and send them to customers."""
