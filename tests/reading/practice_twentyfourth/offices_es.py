"""The offices that write Spanish: a fan works, a motor shop, a pump maker, a spindle service."""

from practice_twentyfourth.office import Office

LIMITS = Office(
    language="es",
    layout="seat rows",
    file="csv ; utf-8-sig",
    machines="Ventilador axial VA-630,Extractor de humos EH-40",
    positions="lado polea,lado hélice",
    bearings="6308-2Z/C3+6207-2Z/C3;6206-2Z+6206-2Z",
    fits="k5 j6 m5 h6/H7 J7 K6",
    dwg="VA-0000",
    comma=True,
    choices="grease=grasa;oil bath=baño de aceite",
    template="""
CONTROL DE ASIENTOS DE RODAMIENTO
Equipo: | {machine} | Plano: | {dwg} | Rev.: | {rev}
Velocidad máx. (rpm): | {nmax} | Masa del rotor (kg): | {mass}

# Apoyo | Pieza | Rodamiento | Diámetro máx. (mm) | Diámetro mín. (mm) | Rugosidad Ra (µm) | Cilindricidad (mm) \
| Salto radial total (mm) | Diámetro del resalte (mm) | Radio de acuerdo máx. (mm) | Verificado
for p:
{p} | Eje | {bd} | {sd.max} | {sd.min} | {sra} | {scy.n:mm.3} | {sru.n:mm.3} | {ssh} | {sfi} | sí
{p} | Alojamiento | {bd} | {hd.max} | {hd.min} | {hra} | {hcy.n:mm.3} | {hru.n:mm.3} | {hsh} | {hfi} | sí
end
--

Observaciones: | medir con la pieza a 20 °C
""",
)
TWO_MACHINES = Office(
    language="es",
    layout="transposed, two machines",
    file="xlsx",
    machines="Motor de bomba MB-112,Motor de grúa MG-132,Motor de cinta MC-80,Motor de telar MT-63",
    positions="LA,LOA",
    bearings="6306-2Z/C3+6206-2Z/C3;6308-2Z/C3+6308-2Z/C3;6204-2Z+6203-2Z",
    fits="k5 k6 m5/H6 H7 J6",
    dwg="MB.000",
    comma=True,
    count=2,
    sheet="Ajustes",
    choices="grease=grasa;oil bath=aceite;steel=acero F-114;stainless steel=acero inoxidable;cast iron=fundición gris;"
    "housing_material.steel=acero;aluminium=aluminio;locating=fijo;floating=libre;continuous=continuo;"
    "intermittent=intermitente",
    template="""
Tabla comparativa de ajustes, motores de bobinado propio
# | | m< {machine} | < >m
# Dato | Unidad | m< p< {p} >p >m
Número de plano | | m< {dwg} | < >m
Velocidad máxima | r/min | m< {nmax} | < >m
Tipo de servicio | | m< {duty} | < >m
Material de la carcasa | | m< {hmat} | < >m
Designación del rodamiento | | m< p< {bd} >p >m
Función axial | | m< p< {role} >p >m
Lubricante | | m< p< {lub} >p >m
Carga radial | N | m< p< {fr} >p >m
Diámetro del asiento del eje | mm | m< p< Ø{sd.n} {sd.c} >p >m
Rugosidad Ra del asiento del eje | µm | m< p< {sra} >p >m
Cilindricidad del asiento del eje | µm | m< p< {scy:µm} >p >m
Diámetro del asiento de la carcasa | mm | m< p< Ø{hd.n} {hd.c} >p >m
Rugosidad Ra del asiento de la carcasa | µm | m< p< {hra} >p >m
Cilindricidad del asiento de la carcasa | µm | m< p< {hcy:µm} >p >m
--

Revisó: | jefe de taller
""",
)
MACHINES = Office(
    language="es",
    layout="machine rows",
    file="csv ; cp1252",
    machines="Bomba B-20,Bomba B-32,Bomba B-40,Bomba B-50,Bomba B-65,Bomba B-80",
    positions="delantero,trasero",
    bearings="6204-2Z+6203-2Z;6305-2Z+6304-2Z;6306-2RS1+6305-2RS1",
    dwg="B00-0",
    comma=True,
    count=3,
    template="""
# Modelo | Nº plano | RPM máx. | Vida L10h requerida (h) | p< Rodamiento {p} >p | p< Ø eje {p} (mm) >p \
| p< Ø alojamiento {p} (mm) >p | p< Ra eje {p} (µm) >p | p< Ra alojamiento {p} (µm) >p \
| @0 p< Carga radial {p} (N) >p | @1 p< Ø resalte eje {p} (mm) >p | Stock
m> {machine} | {dwg} | {nmax} | {life} | p< {bd} >p | p< {sd.n}{sd.c} >p | p< {hd.n}{hd.c} >p \
| p< {sra} >p | p< {hra} >p | @0 p< {fr} >p | @1 p< {ssh} >p | 2
""",
)
RECORDS = Office(
    language="es",
    layout="json flat records",
    file="json",
    machines="Electromandrino EM-30,Cabezal rectificador CR-8",
    positions="frontal,posterior",
    bearings="7008 C/P4+7007 C/P4;71908 C/P4+71907 C/P4",
    fits="js5 k4 h5/JS6 H5 H6",
    dwg="EM-00-00",
    count=1,
    choices="grease=grasa;oil bath=baño de aceite",
    template="""
[{"@p": {"maquina": "{machine}", "plano": "{dwg}", "velocidad_maxima_rpm": "{nmax}",
 "apoyo": "{p}", "rodamiento": "{bd}",
 "fuerza_precarga_N": "{pf}",
 "lubricacion": "{lub}", "carga_radial_N": "{fr}", "carga_axial_N": "{fa}",
 "eje_diametro_mm": "{sd.n}", "eje_tolerancia": "{sd.c}",
 "eje_desv_sup_um": "{sd.u:µm}", "eje_desv_inf_um": "{sd.l:µm}",
 "eje_rugosidad_Ra_um": "{sra}", "eje_cilindricidad_um": "{scy:µm}", "eje_diametro_resalte_mm": "{ssh}",
 "alojamiento_diametro_mm": "{hd.n}", "alojamiento_tolerancia": "{hd.c}", "alojamiento_desv_sup_um": "{hd.u:µm}",
 "alojamiento_desv_inf_um": "{hd.l:µm}", "alojamiento_rugosidad_Ra_um": "{hra}",
 "alojamiento_cilindricidad_um": "{hcy:µm}", "@1 alojamiento_diametro_resalte_mm": "{hsh}",
 "@0 temperatura_de_servicio_C": "{top}",
 "eje_radio_acuerdo_max_mm": "{sfi}", "viscosidad_aceite_base_40C_mm2_s": "{v40}", "almacen": "A3"}}]
""",
)
ODD = (LIMITS, RECORDS)
EVEN = (TWO_MACHINES, MACHINES)
