"""All offices, in their order."""

from practice_twentieth import offices_de, offices_east, offices_en, offices_en_more, offices_fr, offices_it_es

OFFICES = (
    offices_en.PUMPS, offices_en.MOTORS, offices_de.SPINDLES, offices_de.BLOWERS, offices_fr.BROCHES,
    offices_fr.TURBINES, offices_en.TOOLS, offices_en.FANS, offices_it_es.COMPRESSORI, offices_it_es.MOTORI,
    offices_it_es.HUSILLOS, offices_it_es.BOMBAS, offices_east.NASOSY, offices_east.STANKI, offices_east.ZHUZHOU,
    offices_east.DIANJI, offices_east.SOFUKI, offices_east.DENDO, offices_en_more.MODELS, offices_en_more.CARDS,
    offices_de.CAD, offices_de.ELECTRIC, offices_de.FEATURES, offices_fr.MOTEURS,
)  # fmt: skip
